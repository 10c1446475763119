import type { Command } from '#plan/commands/command.ts'
import { plainZeros } from '#plan/document/plainZeros.ts'
import { withoutGoneMarks } from '#plan/document/shaky.ts'
import { stillValid } from '#plan/document/stillValid.ts'
import type { Ride } from '#plan/model.ts'
import type { Text } from '#words/said.ts'

/**
 * A command that leaves the ride as it is rather than make a document that could not be
 * opened again: one that outgrows its bounds, or holds a value out of range. Marks of
 * blocks that went with the change go with them, and −0 is written as 0. Every command is
 * made by this.
 */
export function makeCommand(label: Text, change: (ride: Ride) => Ride): Command {
  return {
    label,
    apply: (ride) => {
      const changed = change(ride)
      if (changed === ride) return ride
      const next = plainZeros(ride, withoutGoneMarks(changed))
      return stillValid(ride, next) ? next : ride
    },
  }
}
