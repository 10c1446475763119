import type { Ride } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import { atTotal, type LedgerState } from './ledgerState.ts'

/** What the knob allows, in whole steps counted from the ride's datum. */
export interface Limits {
  /** The loosest setting and the tightest. */
  floor: KnobSteps
  ceiling: KnobSteps
  /** The base: 0 where the ride counts from it. */
  base: KnobSteps
}

/** Limits of a ride's bike. A base that lies between two steps counts as the nearer one. */
export function limitsOf({ bike, datum }: Pick<Ride, 'bike' | 'datum'>): Limits {
  const steps = (setting: number): KnobSteps => Math.round(setting * bike.stepsPerUnit)
  const zero = datum === 'base' ? steps(bike.base) : 0
  return { floor: steps(bike.min ?? 0) - zero, ceiling: steps(bike.max) - zero, base: steps(bike.base) - zero }
}

/** Where riders are before the first call: at the datum, or the loosest setting where the scale starts above it. */
export const startOf = ({ floor, ceiling }: Limits): LedgerState => atTotal(Math.min(ceiling, Math.max(floor, 0)))
