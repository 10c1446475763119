import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection } from '#plan/edits.ts'
import type { BeatGrid, Ride } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'

/**
 * Moves all beats of a section's song by a time, their distances kept: later when positive. The
 * first beat stays inside the song's first two minutes; nothing happens without beats.
 */
export function moveBeats(ride: Ride, { sectionId, seconds }: { sectionId: string; seconds: Seconds }): Command {
  const title = findSection(ride, sectionId)?.song?.title
  return makeCommand(
    title === undefined
      ? say('commands.nothingTo', { verb: 'change' })
      : say('commands.movedBeats', { title, milliseconds: Math.round(seconds * 1000) }),
    (before) =>
      editSection(before, sectionId, (section) => {
        const grid = section.song?.grid
        if (!section.song || !grid) return section
        const moved = movedBy(grid, seconds)
        return moved === grid ? section : { ...section, song: { ...section.song, grid: moved } }
      }),
  )
}

const LATEST: Seconds = 120

/** A grid later by a time, to the microsecond; the same one where its first beat would leave the song's beginning. */
function movedBy(grid: BeatGrid, seconds: Seconds): BeatGrid {
  const first = grid.anchors[0]![1] + seconds
  if (seconds === 0 || first < -1e-9 || first > LATEST) return grid
  return { ...grid, anchors: grid.anchors.map(([count, second]) => [count, Math.max(0, Number((second + seconds).toFixed(6)))]) }
}
