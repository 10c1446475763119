/**
 * Yardsticks: the oxygen cost of leg cycling as its sources print it, one rider at one power. The engine integrates the
 * same line over time and never asks these.
 */

/** mL/kg/min: 10.8 × watts ÷ mass + 3.5 for turning the legs + 3.5 at rest. Source: ACSM Guidelines, 10th ed. (2018). */
export const oxygenUptake = (watts: number, massKg: number, rpm = 55): number => (10.8 * watts) / massKg + 7 + fastLegs(rpm)

/**
 * What another pace than 55 a minute costs more: a parabola on which 100 costs 0.17 L/min more than 80 for 70 kg.
 * Sources: Stebbins CL et al., J Sports Sci Med 2014;13:114-119 (0.85 kcal/min); form and bottom as in the engine.
 */
const fastLegs = (rpm: number): number => (0.85 / 5 / 0.07) * ((rpm - 55) ** 2 / (45 ** 2 - 25 ** 2))

/** Standing, all of it. Source: Berkemeier QN et al., Int J Exerc Sci 2020;13(2):996-1011: 3.06 to 3.17 L/min. */
export const uptakeStanding = (uptake: number): number => uptake * (3.17 / 3.06)

/** Beats a minute that standing adds. Source: Millet GP et al., Med Sci Sports Exerc 2002;34:1645-1652. */
export const BEATS_STANDING = 8

/** The same from work in kilogram-metres a minute, as belt ergometers state it: 1.8 × kgm/min ÷ mass + 7. Source: the same. */
export const oxygenUptakeOfWork = (kgmPerMinute: number, massKg: number): number => (1.8 * kgmPerMinute) / massKg + 7

/**
 * Another published line, made for peak tests: 1.74 × (watts × 6.12 ÷ mass) + 3.5. It shows how far such figures may be off.
 * Source: Kokkinos P et al., Eur J Prev Cardiol 2018;25(10):1077-1082 (from memory).
 */
export const oxygenUptakeAtPeak = (watts: number, massKg: number): number => 1.74 * ((watts * 6.12) / massKg) + 3.5

/** kcal a minute of an uptake in mL/kg/min: 5 kcal a litre. Source: as `oxygenUptake`. */
export const kcalPerMinute = (uptake: number, massKg: number): number => (uptake * massKg * 5) / 1000
