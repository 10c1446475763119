import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { Ride } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { say } from '#words/said.ts'

/** Takes out a whole section with its song and its blocks. */
export function deleteSection(ride: Ride, { sectionId }: { sectionId: string }): Command {
  const section = findSection(ride, sectionId)
  return makeCommand(
    section ? say('commands.deleted', { name: sectionName(ride, section) }) : say('commands.nothingTo', { verb: 'delete' }),
    (before) => {
      const sections = before.sections.filter((other) => other.id !== sectionId)
      return sections.length === before.sections.length ? before : { ...before, sections }
    },
  )
}
