import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { Ride } from '#plan/model.ts'
import { onScale } from '#plan/scale/onScale.ts'
import { say } from '#words/said.ts'

/**
 * Counts totals from the loose wheel or from each rider's base. The knob stays where it was: every total is read anew,
 * every change stays, but one that opens the ride, since riders start from where totals count.
 */
export function setDatum(datum: Ride['datum']): Command {
  const label = say(datum === 'base' ? 'commands.countedFromBase' : 'commands.countedFromLoose')
  return makeCommand(label, (ride) => {
    return ride.datum === datum ? ride : { ...onScale(ride, { ...ride, datum }), datum }
  })
}
