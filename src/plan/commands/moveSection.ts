import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { clampIndex, moveWithin } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { say, type Text } from '#words/said.ts'

/** Moves a whole section so that it stands at `index` of the ride; an index out of range goes to the nearest end. */
export function moveSection(ride: Ride, { sectionId, index }: { sectionId: string; index: number }): Command {
  return makeCommand(labelOf(ride, sectionId, index), (before) => {
    const from = before.sections.findIndex((section) => section.id === sectionId)
    if (from < 0) return before
    const sections = moveWithin(before.sections, from, index)
    return sections === before.sections ? before : { ...before, sections }
  })
}

function labelOf(ride: Ride, sectionId: string, index: number): Text {
  const section = findSection(ride, sectionId)
  if (!section) return say('commands.nothingTo', { verb: 'move' })
  const others = ride.sections.filter((other) => other !== section)
  const next = others[clampIndex(index, others.length)]
  return say('commands.movedSong', { name: sectionName(ride, section), next: next && sectionName(ride, next) })
}
