import type { Command } from '#plan/commands/command.ts'
import type { Ride } from '#plan/model.ts'
import { stillValid } from '#plan/stillValid.ts'

/**
 * A command that leaves the ride as it is rather than make a document that could not be
 * opened again: one that outgrows its bounds, or holds a value out of range. Every
 * command is made by this.
 */
export function makeCommand(label: string, change: (ride: Ride) => Ride): Command {
  return {
    label,
    apply: (ride) => {
      const next = change(ride)
      return next === ride || stillValid(ride, next) ? next : ride
    },
  }
}
