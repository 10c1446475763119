import { editBlocksIn, editSections, mapSame, patched, withItems } from '#plan/edits.ts'
import { type Block, type Item, isSet, type Resistance, type Ride } from '#plan/model.ts'
import { wholeStep } from '#plan/tidyBlock.ts'
import type { KnobSteps } from '#units/units.ts'

/** How steps are read anew: those counted from the datum, and those that are a change. */
interface StepReading {
  total: (steps: KnobSteps) => number
  change: (steps: KnobSteps) => number
}

/** The ride with every step of every block and set read anew, to whole steps; untouched where nothing differs. */
export function mapSteps(ride: Ride, reading: StepReading): Ride {
  const change = (block: Block): Block =>
    patched(block, {
      resistance: readResistance(block.resistance, reading),
      ownTotal: block.ownTotal === undefined ? undefined : wholeStep(reading.total(block.ownTotal)),
    })
  return editSections(ride, (section) =>
    withItems(
      section,
      mapSame(section.blocks, (item) => readRounds(editBlocksIn(item, change), reading)),
    ),
  )
}

function readRounds(item: Item, { change }: StepReading): Item {
  return isSet(item) && item.perRound ? patched(item, { perRound: { steps: wholeStep(change(item.perRound.steps)) } }) : item
}

function readResistance(resistance: Resistance, reading: StepReading): Resistance {
  const total = (steps: KnobSteps): KnobSteps => wholeStep(reading.total(steps))
  switch (resistance.kind) {
    case 'keep':
    case 'allOff':
      return resistance
    case 'change': {
      const { checkpoint } = resistance
      return {
        ...resistance,
        steps: wholeStep(reading.change(resistance.steps)),
        ...(checkpoint && { checkpoint: { from: total(checkpoint.from), to: total(checkpoint.to) } }),
      }
    }
    case 'byFeel':
      return { ...resistance, from: total(resistance.from), to: total(resistance.to) }
    case 'total':
      return {
        ...resistance,
        from: total(resistance.from),
        to: total(resistance.to),
        ...(resistance.aim !== undefined && { aim: total(resistance.aim) }),
      }
  }
}
