import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { Ride } from '#plan/model.ts'
import { onScale } from '#plan/scale/onScale.ts'

/**
 * Counts totals from the loose wheel or from each rider's base. The knob stays where it was: every total is read anew,
 * every change stays, but one that opens the ride, since riders start from where totals count.
 */
export function setDatum(datum: Ride['datum']): Command {
  const label = datum === 'base' ? 'Counted totals from base' : 'Counted totals from the loose wheel'
  return makeCommand(label, (ride) => {
    return ride.datum === datum ? ride : { ...onScale(ride, { ...ride, datum }), datum }
  })
}
