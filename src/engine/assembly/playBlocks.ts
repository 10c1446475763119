import { alignChange } from '#engine/alignment/alignChange.ts'
import { playCadence } from '#engine/cadence/playCadence.ts'
import type { Footing } from '#engine/cadence/trackFeet.ts'
import type { Ledger } from '#engine/ledger/keepLedger.ts'
import type { Alignment, PlayedBlock } from '#engine/report.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import type { Placed, Timeline } from '#engine/timeline/layTimeline.ts'
import type { Ride } from '#plan/model.ts'

/** Every block as it is played, with its place, cadence, foot, resistance and alignment. */
export function playBlocks(ride: Ride, timeline: Timeline, ledger: Ledger, footings: readonly Footing[]): PlayedBlock[] {
  return timeline.blocks.map((placed, index) => {
    const section = ride.sections[placed.section]!
    const { foot, spoken, strikesPerBeat } = footings[index]!
    const alignment = alignmentOf(ride, placed)
    return {
      index,
      block: placed.block,
      sectionId: section.id,
      section: placed.section,
      ...(placed.set && { set: placed.set }),
      from: placed.rideFrom,
      to: placed.rideTo,
      ...sectionTimes(placed, timeline),
      ...(placed.countFrom !== undefined && { countFrom: placed.countFrom, countTo: placed.countTo }),
      beyond: placed.beyond,
      cadence: playCadence(placed, section),
      strikesPerBeat,
      foot,
      footSpoken: spoken,
      ledger: ledger.lines[index]!.entry,
      ...(alignment && { alignment }),
    }
  })
}

/** Times on the section's clock, cut where a crossfade ends the section. */
function sectionTimes({ from, to, section }: Placed, { sections }: Timeline): { sectionFrom: number; sectionTo: number } {
  const { cut, one, to: end } = sections[section]!
  const last = cut > 0 ? end - one : Number.POSITIVE_INFINITY
  return { sectionFrom: Math.min(from, last), sectionTo: Math.min(to, last) }
}

function alignmentOf(ride: Ride, { section, countFrom }: Placed): Alignment | undefined {
  const plan = ride.sections[section]!
  const grid = plan.song?.grid
  if (!grid || countFrom === undefined) return undefined
  return alignChange(grid, (plan.inCount ?? 0) + countFrom, countingUnit(plan))
}
