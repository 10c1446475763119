import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { KnobSteps, Setting } from '#units/units.ts'
import { calibrationOf, wattsAt } from './calibration.ts'
import { FEEL_LADDER, wattsForEffort } from './feelLadder.ts'

/** A cadence of hills: what a resistance feels like is told by climbing on it. Common practice. */
const HILL_RPM = 70

/**
 * What a total feels like to a regular rider: the bike's own anchor nearest to it, else the rung
 * of the ladder whose power lies nearest to what the bike asks for at the pace of a hill.
 *
 * @param total whole steps from the ride's datum
 */
export function feelOfTotal(total: KnobSteps, { bike, datum }: Pick<Ride, 'bike' | 'datum'>): string {
  const setting = total / bike.stepsPerUnit + (datum === 'base' ? bike.base : 0)
  return anchoredFeel(setting, bike) ?? ladderFeel(setting, bike)
}

function anchoredFeel(setting: Setting, { feelAnchors = [] }: Bike): string | undefined {
  return feelAnchors.toSorted((a, b) => Math.abs(a.setting - setting) - Math.abs(b.setting - setting))[0]?.feel
}

function ladderFeel(setting: Setting, bike: Bike): string {
  const watts = wattsAt(calibrationOf(bike), setting, HILL_RPM)
  const regular = DEFAULT_RIDERS[1]!
  const away = (effort: number) => Math.abs(wattsForEffort(effort, regular, HILL_RPM) - watts)
  return FEEL_LADDER.reduce(
    (best, rung) => (away(rung.effort) < away(best.effort) ? rung : best),
    FEEL_LADDER[0] as (typeof FEEL_LADDER)[number],
  ).feel
}
