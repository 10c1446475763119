import { patched } from '#plan/edits.ts'
import type { Block, Resistance, Section } from '#plan/model.ts'
import { lengthFor } from '#plan/remeasure.ts'
import type { StepRange } from '#units/units.ts'

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
    case 'allOff':
      return resistance
    case 'keep':
      return { ...resistance, ...checked(resistance) }
    case 'change':
      return { ...resistance, steps: wholeStep(resistance.steps), ...checked(resistance) }
    case 'byFeel':
      return { ...resistance, ...rising(resistance) }
    case 'total': {
      const range = rising(resistance)
      const { aim } = resistance
      return {
        ...resistance,
        ...range,
        ...(aim !== undefined && { aim: clamp(wholeStep(aim), range.from, range.to) }),
        ...checked(resistance),
      }
    }
  }
}

const checked = ({ checkpoint }: { checkpoint?: StepRange }) => checkpoint && { checkpoint: { ...checkpoint, ...rising(checkpoint) } }

/** From low to high; of a range without an upper end only the low one counts. */
function rising({ from, to, orMore }: StepRange): StepRange {
  const [low, high] = [wholeStep(Math.min(from, to)), wholeStep(Math.max(from, to))]
  return { from: low, to: orMore ? low : high }
}

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value))

/** The nearest whole step, never the negative zero that JSON does not know. */
export const wholeStep = (steps: number): number => Math.round(steps) + 0
