import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Bike, Ride, Section } from '#plan/model.ts'
import { stepsOnBike } from '#plan/sameLoad.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEights } from '#units/formatEights.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { Counts, KnobSteps } from '#units/units.ts'

/**
 * A rule given in turns over base, in steps of the ride's bike: as it stands on a bike with
 * turns; on another scale what weighs the same as that many turns of the default knob.
 */
export function turnsInSteps(turns: number, ride: Pick<Ride, 'bike' | 'datum'>): KnobSteps {
  const { bike } = ride
  if (bike.unit === 'turn') return turns * bike.stepsPerUnit
  const base = Math.round(bike.base * bike.stepsPerUnit)
  return stepsOnBike(turns * DEFAULT_BIKE.stepsPerUnit, DEFAULT_BIKE, { bike, datum: 'loose' }) - base
}

/** A size on the knob, written small with its unit: "¾ turn", "1½ turns", "2 levels". */
export function amountOfKnob(steps: KnobSteps, { unit, stepsPerUnit }: Pick<Bike, 'unit' | 'stepsPerUnit'>): string {
  const plural = steps > stepsPerUnit && /[a-rt-z]$/.test(unit)
  return `${formatSetting(steps, stepsPerUnit)} ${unit}${plural ? 's' : ''}`
}

/** An amount as the section measures it: "2 eights", "12 s". */
export const sayMeasured = (section: Section, amount: number, eight: Counts): string =>
  section.song?.grid ? formatEights(Math.round(amount * 100) / 100, eight) : formatDuration(amount)
