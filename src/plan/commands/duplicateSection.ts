import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { copySection, type NewId, rememberedIds } from '#plan/copies.ts'
import type { Ride } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { say } from '#words/said.ts'

/** Copies a whole section, blocks, cues and all; the copy stands right after it. */
export function duplicateSection(ride: Ride, { sectionId, newId }: { sectionId: string; newId: NewId }): Command {
  const freshIds = rememberedIds(newId)
  const section = findSection(ride, sectionId)
  return makeCommand(
    section ? say('commands.duplicated', { name: sectionName(ride, section) }) : say('commands.nothingTo', { verb: 'duplicate' }),
    (before) => {
      const index = before.sections.findIndex((other) => other.id === sectionId)
      if (index < 0) return before
      const copy = copySection(before.sections[index]!, freshIds())
      return { ...before, sections: before.sections.toSpliced(index + 1, 0, copy) }
    },
  )
}
