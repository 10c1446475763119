import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { clampIndex, editSection, withItems } from '#plan/edits.ts'
import { type Block, isSet, type Ride, type Section } from '#plan/model.ts'
import { itemsText } from '#plan/names.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Makes a set of blocks that stand next to each other in one section; they become its
 * parts, in the order of the ride. Nothing happens when they are apart, or when a set is
 * among them.
 *
 * @param rounds 1 to 100
 */
export function groupIntoSet(ride: Ride, { ids, rounds, newId }: { ids: readonly string[]; rounds: number; newId: () => string }): Command {
  const setId = newId()
  const times = 1 + clampIndex(rounds - 1, LIMITS.rounds - 1)
  return makeCommand(labelOf(ride, ids, times), (before) => {
    const run = runOf(before, ids)
    if (!run) return before
    const set = { id: setId, rounds: times, parts: run.parts }
    return editSection(before, run.section.id, (section) => withItems(section, section.blocks.toSpliced(run.from, run.parts.length, set)))
  })
}

/** The unbroken run of single blocks that these ids are, wherever it stands. */
function runOf(ride: Ride, ids: readonly string[]): { section: Section; from: number; parts: Block[] } | undefined {
  const wanted = new Set(ids)
  for (const section of ride.sections) {
    const from = section.blocks.findIndex((item) => wanted.has(item.id))
    if (from < 0) continue
    const run = section.blocks.slice(from, from + wanted.size)
    const parts = run.filter((item): item is Block => wanted.has(item.id) && !isSet(item))
    return parts.length === wanted.size ? { section, from, parts } : undefined
  }
  return undefined
}

function labelOf(ride: Ride, ids: readonly string[], rounds: number): Text {
  const run = runOf(ride, ids)
  if (!run) return say('commands.nothingTo', { verb: 'group' })
  return say('commands.grouped', {
    name: itemsText(
      ride,
      run.parts.map(({ id }) => id),
    ),
    rounds,
  })
}
