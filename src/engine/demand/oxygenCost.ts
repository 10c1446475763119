import type { Rpm, Watts } from '#units/units.ts'
import type { Quadratic } from './quadratic.ts'

/**
 * Oxygen cost of leg cycling, gross, in mL per kg and minute: 10.8 × watts ÷ body mass + 7,
 * where 7 is 3.5 at rest and 3.5 for turning the legs at an easy pace (`legCost` says what other
 * paces cost). Steady state, 50–200 W; a class is neither steady nor always inside, which the
 * report says.
 *
 * Source: ACSM's Guidelines for Exercise Testing and Prescription, 10th ed. (2018); restated
 * in Bushman BA, ACSM's Health & Fitness Journal 2020;24(3):6-10 and 24(4):5-8.
 */
export const OXYGEN = {
  /** mL/kg/min a watt per kg of body mass. */
  perWattPerKg: 10.8,
  /** mL/kg/min of a rider at rest: one MET. */
  rest: 3.5,
  /** mL/kg/min of turning the legs against nothing, at the cheapest pace. */
  unloaded: 3.5,
  /** Watts between which the equation was stated. */
  statedRange: [50, 200] as readonly [Watts, Watts],
  /** kcal of one litre of oxygen. */
  kcalPerLitre: 5,
} as const

/**
 * What turning the legs costs beyond that, by the square of how far they are from the pace at which they
 * cost least.
 *
 * Form: cost follows power, pedal speed and its square, each by itself (McDaniel J, Martin JC, abstract
 * “Determinants of metabolic cost of submaximal cycling”, R² 0.98, 40–100 rev/min). Cheapest pace: about 50–60
 * rev/min at low power (the review “Optimal cadence selection during cycling”, read as quoted elsewhere); 60 of 60, 80,
 * 100 and 120 with no load (Foss Ø, Hallén J, Eur J Appl Physiol 2004;92:443-451). The middle is taken; submaximal cycle
 * tests, which the equation serves, are ridden at 50 (YMCA protocol). Size: 100 costs 0.9 and 0.8 kcal/min more than 80 at the same power (Stebbins CL et
 * al., J Sports Sci Med 2014;13:114-119), 0.17 L/min of oxygen; their mass is not in the abstract and is taken
 * as 70 kg.
 */
const CHEAPEST_RPM: Rpm = 55
const PER_SQUARE = 170 / 70 / ((100 - CHEAPEST_RPM) ** 2 - (80 - CHEAPEST_RPM) ** 2)

/** Oxygen cost of turning the legs at a pace, whatever the load: mL/kg/min over rest. */
export const legCost = (rpm: Rpm): number => OXYGEN.unloaded + PER_SQUARE * (rpm - CHEAPEST_RPM) ** 2

/** The same over a cadence that rises or falls evenly, rev/min a second. */
export function legCostOver(rpm: Rpm, slope: number): Quadratic {
  const away = rpm - CHEAPEST_RPM
  return [OXYGEN.unloaded + PER_SQUARE * away * away, 2 * PER_SQUARE * away * slope, PER_SQUARE * slope * slope]
}

/** The power at which the equation gives an uptake, at a pace; negative below unloaded pedalling. */
export const wattsForUptake = (uptake: number, massKg: number, rpm: Rpm = CHEAPEST_RPM): Watts =>
  ((uptake - OXYGEN.rest - legCost(rpm)) * massKg) / OXYGEN.perWattPerKg
