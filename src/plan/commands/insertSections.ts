import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { clampIndex } from '#plan/edits.ts'
import type { Ride, Section } from '#plan/model.ts'
import { joinWords, nameOfSection } from '#plan/names.ts'
import { plural } from '#units/plural.ts'

/** Puts new sections, in their order, at `index` of the ride. Nothing happens when one of their ids is already in the ride. */
export function insertSections(ride: Ride, { index, sections }: { index: number; sections: readonly Section[] }): Command {
  return makeCommand(labelOf(ride, index, sections), (before) =>
    sections.length === 0
      ? before
      : { ...before, sections: before.sections.toSpliced(clampIndex(index, before.sections.length), 0, ...sections) },
  )
}

function labelOf(ride: Ride, index: number, sections: readonly Section[]): string {
  const next = ride.sections[clampIndex(index, ride.sections.length)]
  const where = next ? `before ${nameOfSection(ride, next)}` : 'at the end of the ride'
  const names = sections.map((section) => section.title || section.song?.title || 'a section')
  return `Added ${names.length <= 3 ? joinWords(names) : plural(names.length, 'section')} ${where}`
}
