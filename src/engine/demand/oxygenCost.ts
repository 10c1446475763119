import type { Watts } from '#units/units.ts'

/**
 * Oxygen cost of leg cycling, gross, in mL per kg and minute: 10.8 × watts ÷ body mass + 7,
 * where 7 is 3.5 at rest and 3.5 for turning the legs. Steady state, 50–200 W; a class is
 * neither steady nor always inside, which the report says.
 *
 * Source: ACSM's Guidelines for Exercise Testing and Prescription, 10th ed. (2018); restated
 * in Bushman BA, ACSM's Health & Fitness Journal 2020;24(3):6-10 and 24(4):5-8.
 */
export const OXYGEN = {
  /** mL/kg/min a watt per kg of body mass. */
  perWattPerKg: 10.8,
  /** mL/kg/min of a rider at rest: one MET. */
  rest: 3.5,
  /** mL/kg/min of turning the legs against nothing. */
  unloaded: 3.5,
  /** Watts between which the equation was stated. */
  statedRange: [50, 200] as readonly [Watts, Watts],
  /** kcal of one litre of oxygen. */
  kcalPerLitre: 5,
} as const

/** The power at which the equation gives an uptake; negative below unloaded pedalling. */
export const wattsForUptake = (uptake: number, massKg: number): Watts =>
  ((uptake - OXYGEN.rest - OXYGEN.unloaded) * massKg) / OXYGEN.perWattPerKg
