import { patched } from '#plan/edits.ts'
import type { Block, Resistance, Section, StepRange } from '#plan/model.ts'
import { lengthFor } from '#plan/remeasure.ts'

/**
 * A block with its values brought into range: effort 0 to 10, whole steps, ranges from low
 * to high with the aim inside, a length as its section measures. The same block when all of
 * it is in range.
 */
export function tidyBlock(block: Block, section: Section): Block {
  return patched(block, {
    effort: { from: clamp(block.effort.from, 0, 10), to: clamp(block.effort.to, 0, 10) },
    resistance: tidyResistance(block.resistance),
    ownTotal: block.ownTotal === undefined ? undefined : wholeStep(block.ownTotal),
    length: lengthFor(section, block.length),
  })
}

function tidyResistance(resistance: Resistance): Resistance {
  switch (resistance.kind) {
    case 'keep':
    case 'allOff':
      return resistance
    case 'change':
      return {
        ...resistance,
        steps: wholeStep(resistance.steps),
        ...(resistance.checkpoint && { checkpoint: rising(resistance.checkpoint) }),
      }
    case 'byFeel':
      return { ...resistance, ...rising(resistance) }
    case 'total': {
      const range = rising(resistance)
      return {
        ...resistance,
        ...range,
        ...(resistance.aim !== undefined && { aim: clamp(wholeStep(resistance.aim), range.from, range.to) }),
      }
    }
  }
}

const rising = ({ from, to }: StepRange): StepRange => ({ from: wholeStep(Math.min(from, to)), to: wholeStep(Math.max(from, to)) })

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value))

/** The nearest whole step, never the negative zero that JSON does not know. */
export const wholeStep = (steps: number): number => Math.round(steps) + 0
