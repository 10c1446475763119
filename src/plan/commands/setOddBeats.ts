import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection, sameValue } from '#plan/edits.ts'
import type { Ride, Song } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { eightOf, withOdd } from '#plan/songs/beatGrid.ts'
import { faultOfOdd, type OddPlace } from '#plan/songs/oddBeats.ts'
import { formatStart } from '#plan/songs/songPlace.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Says where a section's song has beats too many or too few. Every beat stays where it is heard, and the legs go on
 * through it; counts after it are other beats from then on, and blocks, marks and points go with their counts, so that
 * eights and phrases stand on the music. Nothing happens without beats, or with a list that cannot be.
 */
export function setOddBeats(ride: Ride, { sectionId, odd }: { sectionId: string; odd: readonly OddPlace[] }): Command {
  const song = findSection(ride, sectionId)?.song
  return makeCommand(song?.grid ? labelOf(song, odd) : say('commands.nothingTo', { verb: 'change' }), (before) =>
    editSection(before, sectionId, (section) => {
      const grid = section.song?.grid
      if (!section.song || !grid || sameValue(odd, grid.odd ?? []) || faultOfOdd(odd)) return section
      return { ...section, song: { ...section.song, grid: withOdd(grid, odd) } }
    }),
  )
}

/** Names the one place that is new or gone; a change of several, or of one's beats, is said as a change. */
function labelOf({ title, grid }: Song, odd: readonly OddPlace[]): Text {
  const old = grid?.odd ?? []
  const isIn = (list: readonly OddPlace[]) => (place: OddPlace) => list.some((other) => sameValue(other, place))
  const added = odd.filter((place) => !isIn(old)(place))
  const gone = old.filter((place) => !isIn(odd)(place))
  const unit = eightOf(grid)
  const valuesOf = ([count, beats]: OddPlace) => ({ title, beats, place: formatStart(count, unit), unit })
  if (added.length === 1 && gone.length === 0) return say('commands.gaveOdd', valuesOf(added[0]!))
  if (gone.length === 1 && added.length === 0) return say('commands.removedOdd', valuesOf(gone[0]!))
  return added.length + gone.length === 0 ? say('commands.nothingTo', { verb: 'change' }) : say('commands.changedOdd', { title })
}

/** The list with so many more beats, or fewer, at a count: added to what is odd there, gone where that comes to none. */
export function withOddAt(odd: readonly OddPlace[] | undefined, [count, beats]: OddPlace): OddPlace[] {
  const there = odd?.find(([at]) => at === count)?.[1] ?? 0
  const others = (odd ?? []).filter(([at]) => at !== count)
  const sum = there + beats
  return (sum === 0 ? others : [...others, [count, sum] as OddPlace]).sort((a, b) => a[0] - b[0])
}
