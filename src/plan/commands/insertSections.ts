import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { clampIndex } from '#plan/edits.ts'
import type { Ride, Section } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { say, type Text } from '#words/said.ts'

/** Puts new sections, in their order, at `index` of the ride. Nothing happens when one of their ids is already in the ride. */
export function insertSections(ride: Ride, { index, sections }: { index: number; sections: readonly Section[] }): Command {
  return makeCommand(labelOf(ride, index, sections), (before) =>
    sections.length === 0
      ? before
      : { ...before, sections: before.sections.toSpliced(clampIndex(index, before.sections.length), 0, ...sections) },
  )
}

function labelOf(ride: Ride, index: number, sections: readonly Section[]): Text {
  const next = ride.sections[clampIndex(index, ride.sections.length)]
  const items = sections.map((section) => section.title || section.song?.title || say('commands.aSong'))
  const name = items.length <= 3 ? say('names.list', { items }) : say('commands.songs', { count: items.length })
  return say('commands.addedSongs', { name, next: next && sectionName(ride, next) })
}
