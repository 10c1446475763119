import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection, mapSame, withItems } from '#plan/edits.ts'
import { isSet, type Ride, type Section } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { Counts } from '#units/units.ts'
import { say } from '#words/said.ts'
import { snapToEights } from './snapToEights.ts'

/** Whether all changes of a section can be moved onto eights: it is counted, has several blocks and no set, whose rounds must stay equal. */
export const canSnap = ({ song, blocks }: Section): boolean => song?.grid !== undefined && blocks.length > 1 && !blocks.some(isSet)

/** Moves all changes of a section onto whole eights (sixes in three and six) by the least total movement, their order kept. */
export function snapSection(ride: Ride, sectionId: string): Command {
  const eight = eightOf(findSection(ride, sectionId)?.song?.grid)
  return makeCommand(say('checksRide.snappedSong', { unit: eight }), (before) =>
    editSection(before, sectionId, (section) => (canSnap(section) ? snapped(section, eightOf(section.song?.grid)) : section)),
  )
}

function snapped(section: Section, eight: Counts): Section {
  // Eights are the song's: an in-point that stands inside one leaves the first block the rest of it.
  const offset = (section.inCount ?? 0) % eight
  let end = offset
  const ends = section.blocks.map((item) => {
    end += isSet(item) ? 0 : amountOf(item.length)
    return end
  })
  const moved = snapToEights(ends, eight)
  const lengths = moved.map((boundary, i) => boundary - (moved[i - 1] ?? offset))
  return withItems(
    section,
    mapSame(section.blocks, (item, i) =>
      isSet(item) || amountOf(item.length) === lengths[i] ? item : { ...item, length: { counts: lengths[i]! } },
    ),
  )
}
