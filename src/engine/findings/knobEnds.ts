import { knobSize } from '#engine/ledger/knobSize.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Resistance } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import type { KnobSteps } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, eachBlock, fix } from './finding.ts'

/** Calls that ask for more than the knob has, at either end. */
export function knobEnds(facts: Facts): Finding[] {
  const { ride, ledger } = facts
  return eachBlock(facts, (played) => {
    const { under, over } = ledger.lines[played.index]!
    const block = quotedItem(played.block)
    if (under > 0) {
      const text = say('checksKnob.knobLoose', { block, size: knobSize(under, ride.bike) })
      return { rule: 'knobLoose', severity: 'problem', text, why: ARITHMETIC, amount: under, fixes: () => [within(played, under)] }
    }
    if (over > 0) {
      const text = say('checksKnob.knobTight', { block, size: knobSize(over, ride.bike) })
      return { rule: 'knobTight', severity: 'problem', text, why: ARITHMETIC, amount: over, fixes: () => [within(played, -over)] }
    }
    return undefined
  })
}

/** Asks for as much as there is. */
function within({ block }: PlayedBlock, steps: KnobSteps): Fix {
  const label = say(steps > 0 ? 'checksKnob.stopAtLoosest' : 'checksKnob.capAtTightest')
  return fix(label, say('checksKnob.keptInKnob', { block: quotedItem(block) }), (ride) =>
    editBlock(ride, block.id, (before) => ({ ...before, resistance: moved(before.resistance, steps) })),
  )
}

function moved(call: Resistance, steps: KnobSteps): Resistance {
  switch (call.kind) {
    case 'keep':
    case 'allOff':
      return call
    case 'change':
      return call.steps + steps === 0 && !call.checkpoint ? { kind: 'keep' } : { ...call, steps: call.steps + steps }
    case 'total':
    case 'byFeel':
      return raised(call, steps)
  }
}

/** The low end comes up, or the aim and what forces it come down; a range does not shift as a whole. */
function raised(call: Extract<Resistance, { kind: 'total' | 'byFeel' }>, steps: KnobSteps): Resistance {
  const aim = call.kind === 'total' ? call.aim : undefined
  const from = steps > 0 || aim === undefined ? call.from + steps : Math.min(call.from, aim + steps)
  const to = call.from === call.to ? from : Math.max(from, call.to)
  return { ...call, from, to, ...(aim !== undefined && { aim: steps > 0 ? Math.max(from, aim) : aim + steps }) }
}
