import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import type { PartTarget } from '#plan/commands/movePart.ts'
import { type Item, isSet, type Ride } from '#plan/model.ts'
import type { Seconds, Stretch } from '#units/units.ts'

/**
 * The place that a time on the stage stands for: an index among a section's items, or among a set's parts. Read off the ride as it was when the drag began, so the
 * answer depends on the pointer alone and the stage cannot flicker between two answers.
 *
 * Among items, the pointer is before an item until it passes that item's middle. A block held over the
 * inner part of a set goes into the set; over its first or last tenth it goes before or behind it.
 *
 * @param dragged ids that are being moved: they take no place while they are in the hand
 * @param intoSets whether a set may take it (a set cannot hold a set)
 */
export function dropTarget(
  ride: Ride,
  report: RideReport,
  at: Seconds,
  dragged: ReadonlySet<string>,
  intoSets: boolean,
): PartTarget | null {
  const place = sectionAt(report, at)
  if (place === null) return null
  const section = ride.sections[place]!
  const stretches = itemStretches(section.blocks, report, place)
  let index = 0
  for (const [i, item] of section.blocks.entries()) {
    if (dragged.has(item.id)) continue
    const stretch = stretches[i]!
    if (isSet(item) && intoSets && at >= stretch.from && at < stretch.to) {
      const edge = (stretch.to - stretch.from) / 10
      if (at < stretch.from + edge) return { sectionId: section.id, index }
      if (at < stretch.to - edge) return { setId: item.id, index: partIndex(report, item.id, at, dragged) }
    } else if (at < (stretch.from + stretch.to) / 2) {
      return { sectionId: section.id, index }
    }
    index++
  }
  return { sectionId: section.id, index }
}

/** The place among whole sections that a time stands for, with `dragged` out of the row. */
export function sectionDropIndex(report: RideReport, at: Seconds, dragged: string): number {
  let index = 0
  for (const section of report.sections) {
    if (section.sectionId === dragged) continue
    if (at < (section.from + section.to) / 2) return index
    index++
  }
  return index
}

function sectionAt(report: RideReport, at: Seconds): number | null {
  if (report.sections.length === 0) return null
  const found = report.sections.findIndex((section) => at < section.to)
  return found === -1 ? report.sections.length - 1 : found
}

function itemStretches(items: readonly Item[], report: RideReport, section: number): Stretch[] {
  const stretches = new Map<string, Stretch>()
  const { from, to } = report.sections[section]!.blocks
  for (const played of report.blocks.slice(from, to)) {
    const id = played.set?.set.id ?? played.block.id
    const known = stretches.get(id)
    if (known) known.to = played.to
    else stretches.set(id, { from: played.from, to: played.to })
  }
  const start = report.sections[section]!.one
  return items.map((item) => stretches.get(item.id) ?? { from: start, to: start })
}

/** Index among the set's parts, read in whichever round the pointer is over. */
function partIndex(report: RideReport, setId: string, at: Seconds, dragged: ReadonlySet<string>): number {
  const parts = report.blocks.filter((played) => played.set?.set.id === setId)
  const round = parts.find((played) => at < played.to)?.set?.round
  const inRound: PlayedBlock[] = parts.filter((played) => played.set?.round === round && !dragged.has(played.block.id))
  const index = inRound.findIndex((played) => at < (played.from + played.to) / 2)
  return index === -1 ? inRound.length : index
}
