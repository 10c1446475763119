import { secondAt } from '#plan/beatGrid.ts'
import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection } from '#plan/edits.ts'
import type { BeatGrid, Ride } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { plural } from '#plan/words.ts'
import type { Counts } from '#units/units.ts'

/**
 * Beats that a song has over before one of its eights: the counts before it, as many as the beats,
 * last twice as long, so that the eights and phrases after them stand on the music again. The grid
 * holds this as a slower stretch between two anchors; counts, blocks and marks stay what they were.
 * (Counts have no gaps, so beats over cannot be left uncounted; and a bar cut short is an eight of
 * fewer beats, which are over before the next.)
 *
 * @param count the first count after the beats that are over; more than there are beats over
 * @param beats how many, 1 to 7
 */
export function insertOddBeats(ride: Ride, { sectionId, count, beats }: { sectionId: string; count: Counts; beats: number }): Command {
  const song = findSection(ride, sectionId)?.song
  const label = song?.grid ? `Gave ${song.title} ${plural(beats, 'odd beat')} before count ${count + 1}` : 'Changed nothing'
  return makeCommand(label, (before) =>
    editSection(before, sectionId, (section) => {
      if (!section.song?.grid || !(beats >= 1 && beats <= 7 && count >= beats)) return section
      return { ...section, song: { ...section.song, grid: slowedBefore(section.song.grid, count, beats) } }
    }),
  )
}

function slowedBefore(grid: BeatGrid, count: Counts, beats: number): BeatGrid {
  const from = count - beats
  const later = secondAt(grid, count) - secondAt(grid, from)
  const timeAt = (at: Counts) => secondAt(grid, at) + (at <= from ? 0 : later * Math.min(1, (at - from) / beats))
  // Outside its anchors a grid goes on as its outer steps do, which must not be the slowed one.
  const counts = new Set([...grid.anchors.map(([at]) => at), ...(from > 0 ? [from - 1] : []), from, count, count + 1])
  const anchors = [...counts].sort((a, b) => a - b).map((at): [Counts, number] => [at, Number(timeAt(at).toFixed(6))])
  return { ...grid, anchors }
}
