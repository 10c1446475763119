import { feelOfTotal } from '#engine/demand/feelOfTotal.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { KnobSteps, Rpm, Watts } from '#units/units.ts'
import { type Translated, translateSetting } from './translateSetting.ts'

/** A bike a ride is shown on, and what its totals count from there. */
export interface ShownOn {
  bike: Bike
  datum: Ride['datum']
}

/** A total of the ride as it stands on another bike. */
export type TotalOnBike =
  | {
      kind: 'reading'
      /** Whole steps of that bike, from what its totals count from. */
      total: KnobSteps
      feel: string
      wattsOff: Watts
      /** The same in steps: rounded less exact, from −½ to ½ unless the knob ends. */
      stepsOff: number
    }
  | { kind: 'byFeel'; feel: string; side: 'below' | 'above' }

/**
 * How totals count on a bike. Turns have no figures on the knob: they count as the ride's own
 * turns do, or from base. Any other unit is read off the bike, so it counts from its own nought.
 */
export function shownOn(bike: Bike, ride: Pick<Ride, 'bike' | 'datum'>): ShownOn {
  if (bike.unit !== 'turn') return { bike, datum: 'loose' }
  return { bike, datum: ride.bike.unit === 'turn' ? ride.datum : 'base' }
}

/**
 * A total of a ride on another bike, at a cadence, for a rider with no offset from the base.
 * The feel is the nearest one on the bike it is read on; by feel, that on the ride's own.
 *
 * @param total whole steps of the ride's bike, from the ride's datum
 * @param on what of the other bike, and what its totals count from
 */
export function readTotal(total: KnobSteps, ride: Pick<Ride, 'bike' | 'datum'>, on: ShownOn, rpm: Rpm): TotalOnBike {
  const setting = total / ride.bike.stepsPerUnit + (ride.datum === 'base' ? ride.bike.base : 0)
  const found: Translated = translateSetting(setting, ride.bike, on.bike, rpm)
  if (found.kind === 'byFeel') return { kind: 'byFeel', feel: feelOfTotal(total, ride), side: found.side }
  const { stepsPerUnit, base } = on.bike
  const read = Math.round(found.setting * stepsPerUnit) - (on.datum === 'base' ? Math.round(base * stepsPerUnit) : 0)
  return {
    kind: 'reading',
    total: read,
    feel: feelOfTotal(read, on),
    wattsOff: found.wattsOff,
    stepsOff: (found.setting - found.exact) * stepsPerUnit,
  }
}
