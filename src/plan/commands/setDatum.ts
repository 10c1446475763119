import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { mapSteps } from '#plan/mapSteps.ts'
import type { Ride } from '#plan/model.ts'

/** Counts totals from the loose wheel or from each rider's base. The knob stays where it was: every total is read anew, every change stays. */
export function setDatum(datum: Ride['datum']): Command {
  const label = datum === 'base' ? 'Counted totals from base' : 'Counted totals from the loose wheel'
  return makeCommand(label, (ride) => {
    if (ride.datum === datum) return ride
    const base = Math.round(ride.bike.base * ride.bike.stepsPerUnit)
    const shift = datum === 'loose' ? base : -base
    return { ...mapSteps(ride, { total: (steps) => steps + shift, change: (steps) => steps }), datum }
  })
}
