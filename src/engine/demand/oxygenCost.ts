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

/** Gross uptake in mL/kg/min while the legs turn; `rest` alone when they are still. */
export const oxygenUptake = (watts: Watts, massKg: number): number => (OXYGEN.perWattPerKg * watts) / massKg + OXYGEN.rest + OXYGEN.unloaded

/** The same from work in kilogram-metres a minute, as belt ergometers state it: 1.8 × kgm/min ÷ mass + 7. */
export const oxygenUptakeOfWork = (kgmPerMinute: number, massKg: number): number =>
  (1.8 * kgmPerMinute) / massKg + OXYGEN.rest + OXYGEN.unloaded

/** The power at which the equation gives an uptake; negative below unloaded pedalling. */
export const wattsForUptake = (uptake: number, massKg: number): Watts =>
  ((uptake - OXYGEN.rest - OXYGEN.unloaded) * massKg) / OXYGEN.perWattPerKg

/** Energy of an uptake, in kcal a minute. */
export const kcalPerMinute = (uptake: number, massKg: number): number => (uptake * massKg * OXYGEN.kcalPerLitre) / 1000

/** Uptake in multiples of rest. */
export const metsOf = (uptake: number): number => uptake / OXYGEN.rest

/** kcal of a stretch at a number of METs: METs × 3.5 × kg ÷ 200 a minute. */
export const kcalOfMets = (mets: number, massKg: number, minutes: number): number => kcalPerMinute(mets * OXYGEN.rest, massKg) * minutes

/**
 * Another published line, made for peak tests: 1.74 × (watts × 6.12 ÷ mass) + 3.5. It reads
 * about an eighth lower in mid range and shows how far such figures may be off.
 * Source: Kokkinos P et al., Eur J Prev Cardiol 2018;25(10):1077-1082 (from memory).
 */
export const oxygenUptakeAtPeak = (watts: Watts, massKg: number): number => 1.74 * ((watts * 6.12) / massKg) + 3.5
