import { alignChange } from '#engine/alignment/alignChange.ts'
import { playCadence } from '#engine/cadence/playCadence.ts'
import type { Footing } from '#engine/cadence/trackFeet.ts'
import type { Ledger } from '#engine/ledger/keepLedger.ts'
import type { Alignment, PlayedBlock } from '#engine/played.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import type { Placed, Timeline } from '#engine/timeline/layTimeline.ts'
import type { Ride } from '#plan/model.ts'

/** Every block as it is played, with its place, cadence, foot, resistance and alignment. */
export function playBlocks(ride: Ride, timeline: Timeline, ledger: Ledger, footings: readonly Footing[]): PlayedBlock[] {
  return timeline.blocks.map((placed, index) => {
    const section = ride.sections[placed.section]!
    const { foot, spoken, strikesPerBeat } = footings[index]!
    const { cut, one, to: end } = timeline.sections[placed.section]!
    // A crossfade ends the section early, on its own clock too.
    const last = cut > 0 ? end - one : Number.POSITIVE_INFINITY
    return {
      index,
      block: placed.block,
      sectionId: section.id,
      section: placed.section,
      set: placed.set,
      from: placed.rideFrom,
      to: placed.rideTo,
      sectionFrom: Math.min(placed.from, last),
      sectionTo: Math.min(placed.to, last),
      countFrom: placed.countFrom,
      countTo: placed.countTo,
      beyond: placed.beyond,
      cadence: playCadence(placed, section),
      strikesPerBeat,
      foot,
      footSpoken: spoken,
      ledger: ledger.lines[index]!.entry,
      alignment: alignmentOf(ride, placed),
    }
  })
}

function alignmentOf(ride: Ride, { section, countFrom }: Placed): Alignment | undefined {
  const plan = ride.sections[section]!
  const grid = plan.song?.grid
  if (!grid || countFrom === undefined) return undefined
  return alignChange(grid, (plan.inCount ?? 0) + countFrom, countingUnit(plan))
}
