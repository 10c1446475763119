import type { Block, Resistance } from '#plan/model.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'

type ReadTotal = (total: KnobSteps) => KnobSteps

/** A block with every total it names read otherwise: stated ones, where riders should be, and the leader's own. Changes stay. */
export function withTotals(block: Block, read: ReadTotal): Block {
  const resistance = totalsOf(block.resistance, read)
  return block.ownTotal === undefined ? { ...block, resistance } : { ...block, resistance, ownTotal: read(block.ownTotal) }
}

function totalsOf(call: Resistance, read: ReadTotal): Resistance {
  switch (call.kind) {
    case 'allOff':
      return call
    case 'byFeel':
      return inTotals(call, read)
    case 'total':
      return { ...inTotals(call, read), ...(call.aim !== undefined && { aim: read(call.aim) }), ...checked(call, read) }
    default:
      return { ...call, ...checked(call, read) }
  }
}

const inTotals = <Range extends StepRange>(range: Range, read: ReadTotal): Range => ({
  ...range,
  from: read(range.from),
  to: read(range.to),
})

const checked = ({ checkpoint }: { checkpoint?: StepRange }, read: ReadTotal) => checkpoint && { checkpoint: inTotals(checkpoint, read) }
