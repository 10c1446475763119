import type { Command } from '#plan/commands/command.ts'
import { insertSections } from '#plan/commands/insertSections.ts'
import { copySection, type NewId } from '#plan/copies.ts'
import type { Ride, Section } from '#plan/model.ts'
import { say } from '#words/said.ts'

/** Puts copies of whole sections, with ids of their own, at `index` of the ride. */
export function pasteSections(
  ride: Ride,
  { sections, index, newId }: { sections: readonly Section[]; index: number; newId: NewId },
): Command {
  const copies = sections.map((section) => copySection(section, newId))
  const items = copies.map(({ title, song }) => title || song?.title || say('commands.aSong'))
  const name = items.length <= 3 ? say('names.list', { items }) : say('commands.songs', { count: items.length })
  return { ...insertSections(ride, { index, sections: copies }), label: say('clipboard.pastedSongs', { name }) }
}
