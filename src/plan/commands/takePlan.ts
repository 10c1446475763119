import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { copyItem, type NewId, rememberedIds } from '#plan/copies.ts'
import { editSection, patched, withItems } from '#plan/edits.ts'
import type { Foot, Item, Ride, Song } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { withSong } from '#plan/songs/withSong.ts'
import { say } from '#words/said.ts'

interface PlanTaken {
  sectionId: string
  /** In the measure of the section, once it has the song. */
  items: readonly Item[]
  /** The song they are ridden to: the section's own with its strokes, or the one that takes its place. */
  song: Song | null
  /** The foot they begin with. */
  lead?: Foot
  /** The ride they were planned in. */
  rideTitle: string
  newId: NewId
}

/** Puts what was once planned for a song in place of all blocks of a section, with ids of their own. */
export function takePlan(ride: Ride, { sectionId, items, song, lead, rideTitle, newId }: PlanTaken): Command {
  const freshIds = rememberedIds(newId)
  const section = findSection(ride, sectionId)
  const where = section ? sectionName(ride, song ? { ...section, song } : section) : ''
  const from = rideTitle || say('names.untitled')
  const label = section && items.length > 0 ? say('songPlans.took', { from, where }) : say('commands.nothingTo', { verb: 'change' })
  return makeCommand(label, (before) => {
    if (items.length === 0) return before
    const nextId = freshIds()
    const copies = items.map((item) => copyItem(item, nextId))
    return editSection(before, sectionId, (one) =>
      withItems(patched(song ? withSong(one, song) : one, lead === undefined ? {} : { lead }), copies),
    )
  })
}
