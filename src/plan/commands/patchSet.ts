import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { clampIndex, editSet, patched } from '#plan/edits.ts'
import type { Ride, SetBlock } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findSet } from '#plan/places.ts'
import { wholeStep } from '#plan/tidyBlock.ts'
import { say, type Text } from '#words/said.ts'

/** Fields of a set to replace; a field given as undefined is taken out. */
export type SetPatch = Partial<Pick<SetBlock, 'label' | 'rounds' | 'perRound'>>

/** Replaces fields of a set: rounds from 1 to 100, whole steps a round; none added is no addition. */
export function patchSet(ride: Ride, { setId, patch }: { setId: string; patch: SetPatch }): Command {
  return makeCommand(labelOf(ride, setId, patch), (before) => editSet(before, setId, (set) => patched(set, tidy(patch))))
}

function tidy(patch: SetPatch): SetPatch {
  const steps = wholeStep(patch.perRound?.steps ?? 0)
  return {
    ...patch,
    ...(patch.rounds !== undefined && { rounds: 1 + clampIndex(patch.rounds - 1, LIMITS.rounds - 1) }),
    ...('perRound' in patch && { perRound: steps === 0 ? undefined : { steps } }),
  }
}

function labelOf(ride: Ride, setId: string, patch: SetPatch): Text {
  const set = findSet(ride, setId)?.set
  if (!set) return say('commands.nothingTo', { verb: 'change' })
  const name = itemName(set)
  const { rounds } = tidy(patch)
  const keys = Object.keys(patch) as (keyof SetPatch)[]
  if (keys.join() === 'rounds' && rounds !== undefined) return say('commands.gaveRounds', { name, rounds })
  return say('commands.changed', { fields: keys.map((field) => say('commands.setField', { field })), name })
}
