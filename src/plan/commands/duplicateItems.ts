import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { copyBlock, copyItem, type NewId, rememberedIds } from '#plan/copies.ts'
import { editSections, mapSame, withItems, withParts } from '#plan/edits.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { itemsText } from '#plan/names.ts'
import { say } from '#words/said.ts'

/**
 * Copies blocks, sets and parts of sets. In every section (or set) the copies stand
 * together, in order, right after the last one copied there; a set copied whole is not
 * copied part by part as well.
 */
export function duplicateItems(ride: Ride, { ids, newId }: { ids: readonly string[]; newId: NewId }): Command {
  const chosen = new Set(ids)
  const freshIds = rememberedIds(newId)
  return makeCommand(say('commands.duplicated', { name: itemsText(ride, ids) }), (before) => {
    const nextId = freshIds()
    return editSections(before, (section) => {
      const inner = mapSame(section.blocks, (item) =>
        isSet(item) && !chosen.has(item.id)
          ? withParts(
              item,
              withCopies(item.parts, chosen, (part) => copyBlock(part, nextId)),
            )
          : item,
      )
      return withItems(
        section,
        withCopies(inner, chosen, (item) => copyItem(item, nextId)),
      )
    })
  })
}

function withCopies<T extends { id: string }>(list: readonly T[], chosen: ReadonlySet<string>, copy: (element: T) => T): readonly T[] {
  const last = list.findLastIndex((element) => chosen.has(element.id))
  if (last < 0) return list
  return list.toSpliced(last + 1, 0, ...list.filter((element) => chosen.has(element.id)).map(copy))
}
