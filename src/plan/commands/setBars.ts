import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection, sameValue } from '#plan/edits.ts'
import type { BeatGrid, Ride } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { secondAt, withOdd } from '#plan/songs/beatGrid.ts'
import { type OddPlace, startOfOdd } from '#plan/songs/oddBeats.ts'
import type { Counts } from '#units/units.ts'
import { say } from '#words/said.ts'

interface Bars {
  beatsPerBar: BeatGrid['beatsPerBar']
  /** The beat that becomes the first one, as it is counted now; negative is earlier. */
  shift: Counts
  /** The odd places the song then has, as it is counted then; those it has unless given. */
  odd?: readonly OddPlace[]
}

/**
 * Says which beats of a section's song are the ones, and how many make a bar. Beats stay where they
 * are heard and are counted from another one; blocks, marks and points keep their counts, so that they
 * move with the ones. Nothing happens without beats, or where the first one would lie before the song.
 */
export function setBars(ride: Ride, { sectionId, beatsPerBar, shift, odd }: Bars & { sectionId: string }): Command {
  const title = findSection(ride, sectionId)?.song?.title
  return makeCommand(title === undefined ? say('commands.nothingTo', { verb: 'change' }) : say('commands.setBars', { title }), (before) =>
    editSection(before, sectionId, (section) => {
      const { song } = section
      if (!song?.grid) return section
      const counted = countedFrom(song.grid, beatsPerBar, shift)
      const grid = odd === undefined || sameValue(odd, counted.odd ?? []) ? counted : withOdd(counted, odd)
      return grid === song.grid ? section : { ...section, song: { ...song, grid } }
    }),
  )
}

function countedFrom(grid: BeatGrid, beatsPerBar: BeatGrid['beatsPerBar'], shift: Counts): BeatGrid {
  if (shift === 0) return grid.beatsPerBar === beatsPerBar ? grid : { ...grid, beatsPerBar }
  const first = secondAt(grid, grid.anchors[0]![0] + shift)
  if (!Number.isInteger(shift) || first < 0) return grid
  // An odd place that would begin before the first beat is none: nothing before it is counted.
  const odd = grid.odd?.map(([count, beats]): OddPlace => [count - shift, beats]).filter((place) => startOfOdd(place) >= 0)
  return { beatsPerBar, anchors: moved(grid, shift), ...(odd?.length && { odd }) }
}

/** The same beats under lower numbers (higher for a negative shift), from the grid's own first number on. */
function moved(grid: BeatGrid, shift: Counts): BeatGrid['anchors'] {
  const [[start]] = grid.anchors as [BeatGrid['anchors'][number]]
  const kept = grid.anchors.filter(([count]) => count - shift > start).map(([count, second]): [number, number] => [count - shift, second])
  const anchors: BeatGrid['anchors'] = [[start, secondAt(grid, start + shift)], ...kept]
  // A grid shorter than the shift goes on in its last tempo.
  return anchors.length > 1 ? anchors : [...anchors, [start + 1, secondAt(grid, start + shift + 1)]]
}
