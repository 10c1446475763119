import type { Ledger } from '#engine/ledger/keepLedger.ts'
import { formatTotal } from '#engine/ledger/sayCall.ts'
import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import type { Timeline } from '#engine/timeline/layTimeline.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import { type Ride, tempoOf } from '#plan/model.ts'

/** Every section with its times, counts, cover, alignment and the totals riders come in and leave with. */
export function reportSections(ride: Ride, timeline: Timeline, ledger: Ledger, blocks: readonly PlayedBlock[]): SectionReport[] {
  const total = (state: LedgerState): string => formatTotal(state, ride.bike, speechOf(ride))
  return timeline.sections.map((placed, index) => {
    const section = ride.sections[index]!
    const grid = section.song?.grid
    return {
      sectionId: section.id,
      from: placed.from,
      one: placed.one,
      to: placed.to,
      ...(placed.counts && { counts: placed.counts }),
      unit: countingUnit(section),
      ...(grid && { bpm: tempoOf(grid) }),
      blocks: { from: placed.firstBlock, to: placed.endBlock },
      open: placed.open,
      beyond: placed.beyond,
      aligned: alignedShare(blocks, placed.firstBlock, placed.endBlock),
      entersAt: total(ledger.lines[placed.firstBlock - 1]?.entry.after ?? ledger.start),
      leavesAt: total(ledger.lines[placed.endBlock - 1]?.entry.after ?? ledger.start),
    }
  })
}

/** Share of the changes between the first block and the last that meet an eight or a phrase. */
function alignedShare(blocks: readonly PlayedBlock[], first: number, end: number): number | null {
  let changes = 0
  let met = 0
  for (let i = first + 1; i < end; i++) {
    const grade = blocks[i]!.alignment?.grade
    if (!grade) return null
    changes++
    if (grade === 'phrase' || grade === 'eight') met++
  }
  return changes > 0 ? met / changes : null
}
