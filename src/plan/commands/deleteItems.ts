import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSections, withItems, withParts } from '#plan/edits.ts'
import { type Item, isSet, type Ride } from '#plan/model.ts'
import { itemsText } from '#plan/names.ts'
import { say } from '#words/said.ts'

/** Takes out blocks, sets and parts of sets; a set left without parts goes too. */
export function deleteItems(ride: Ride, ids: readonly string[]): Command {
  const gone = new Set(ids)
  return makeCommand(say('commands.deleted', { name: itemsText(ride, ids) }), (before) =>
    editSections(before, (section) => {
      const kept = section.blocks.flatMap((item) => withoutParts(item, gone))
      const same = kept.length === section.blocks.length && kept.every((item, index) => item === section.blocks[index])
      return same ? section : withItems(section, kept)
    }),
  )
}

function withoutParts(item: Item, gone: ReadonlySet<string>): Item[] {
  if (gone.has(item.id)) return []
  if (!isSet(item)) return [item]
  const parts = item.parts.filter((part) => !gone.has(part.id))
  if (parts.length === item.parts.length) return [item]
  return parts.length === 0 ? [] : [withParts(item, parts)]
}
