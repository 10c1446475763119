import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { patched } from '#plan/edits.ts'
import { mapSteps } from '#plan/mapSteps.ts'
import type { Bike, Ride } from '#plan/model.ts'

/**
 * Gives the ride another bike. Totals and changes keep what they say in the bike's unit (a
 * turn stays a turn), in the new bike's steps and to the nearest whole one; the label says
 * when that was needed. The load of another kind of scale is not translated.
 */
export function setBike(ride: Ride, bike: Bike): Command {
  return makeCommand(labelOf(ride.bike, bike), (before) => {
    const next = patched(before, { bike })
    const share = bike.stepsPerUnit / before.bike.stepsPerUnit
    if (next === before || share === 1) return next
    const read = (steps: number) => steps * share
    return mapSteps(next, { total: read, change: read })
  })
}

function labelOf(from: Bike, to: Bike): string {
  const changed = `Changed the bike to ${to.name}`
  return from.stepsPerUnit === to.stepsPerUnit ? changed : `${changed}; totals are rounded to ${stepName(to)}`
}

const stepName = ({ stepsPerUnit, unit }: Bike): string =>
  stepsPerUnit === 1
    ? `whole ${unit}s`
    : stepsPerUnit === 2
      ? `half ${unit}s`
      : stepsPerUnit === 4
        ? `quarter ${unit}s`
        : `1/${stepsPerUnit} ${unit}`
