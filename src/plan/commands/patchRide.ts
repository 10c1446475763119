import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { say, type Text } from '#words/said.ts'

/** Fields of a ride to replace; a field given as undefined is taken out. The bike, the datum and what is put aside have commands of their own. */
export type RidePatch = Partial<Omit<Ride, 'schema' | 'id' | 'sections' | 'bike' | 'datum' | 'parent' | 'ancestors' | 'setAside' | 'shaky'>>

/**
 * Replaces fields of the ride itself. The class length is held to 1–360 minutes, welcome and
 * wipe-down to 0–2 hours; blocks of a leader who is gone go to the first one. A value the
 * document cannot hold changes nothing.
 */
export function patchRide(patch: RidePatch): Command {
  return makeCommand(labelOf(patch), (before) => {
    const next = patched(before, tidy(patch))
    return next.leaders === before.leaders ? next : withoutMissingLeaders(next)
  })
}

function tidy(patch: RidePatch): RidePatch {
  const { slotMinutes, briefingSeconds, clearUpSeconds } = patch
  return {
    ...patch,
    // No language given is English: one way to say it.
    ...(patch.language === 'en' && { language: undefined }),
    ...(slotMinutes !== undefined && { slotMinutes: clamp(slotMinutes, 1, 360) }),
    ...(briefingSeconds !== undefined && { briefingSeconds: clamp(briefingSeconds, 0, 7200) }),
    ...(clearUpSeconds !== undefined && { clearUpSeconds: clamp(clearUpSeconds, 0, 7200) }),
  }
}

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value))

function withoutMissingLeaders(ride: Ride): Ride {
  const known = new Set(ride.leaders.map((leader) => leader.id))
  const ofRide = (id: string | undefined) => (id !== undefined && known.has(id) ? id : undefined)
  return editSections(ride, (section) =>
    editBlocksOf(section, (block) => patched(block, { leader: ofRide(block.leader), mic: ofRide(block.mic) })),
  )
}

function labelOf(patch: RidePatch): Text {
  const keys = Object.keys(patch) as (keyof RidePatch)[]
  if (keys.join() === 'title' && patch.title) return say('commands.renamedRide', { to: patch.title })
  return say('commands.changedRide', { fields: keys.map((field) => say('commands.rideField', { field })) })
}
