import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { patched } from '#plan/edits.ts'
import { sameState } from '#plan/ledger/ledgerState.ts'
import { limitsOf, startOf } from '#plan/ledger/limits.ts'
import type { Bike, Ride } from '#plan/model.ts'
import { onScale } from '#plan/scale/onScale.ts'
import { say, type Text } from '#words/said.ts'

/**
 * Gives the ride another bike. Totals keep what they say in the bike's unit (a turn stays a
 * turn), in the new bike's steps and to the nearest whole one, and changes become what leads from
 * one to the next; the label says when that was needed. The load of another kind of scale is not translated.
 */
export function setBike(ride: Ride, bike: Bike): Command {
  return makeCommand(labelOf(ride.bike, bike), (before) => {
    const next = patched(before, { bike })
    // The same steps say the same, whatever the knob's ends are now, as long as riders start from the same total.
    const saysTheSame = bike.stepsPerUnit === before.bike.stepsPerUnit && sameState(startOf(limitsOf(next)), startOf(limitsOf(before)))
    return next === before || saysTheSame ? next : { ...onScale(before, next), bike }
  })
}

function labelOf(from: Bike, to: Bike): Text {
  const { name: bike, stepsPerUnit, unit } = to
  return from.stepsPerUnit === stepsPerUnit
    ? say('commands.changedBike', { bike })
    : say('commands.changedBikeRounded', { bike, stepsPerUnit, unit })
}
