import { brakeLawOf, speedFactor } from '#engine/demand/brakeLaw.ts'
import { type Calibration, calibrationOf, wattsAt } from '#engine/demand/calibration.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Bike } from '#plan/model.ts'
import type { KnobSteps, Rpm, Setting, Watts } from '#units/units.ts'
import { translateSetting } from './translateSetting.ts'

/** What a rule asks for at least is rounded up, what it allows at most down. */
export type Line = 'atLeast' | 'atMost'

/** A rounding error of the way there and back is no step. */
const ROUNDING = 1e-9

/**
 * A rule given in turns over base, in whole steps over a bike's base and to the safe side: the setting that weighs there, at
 * a cadence, what so many turns over base weigh on the typical knob. On that knob it is the very turns. A base that weighs
 * more than the rule by itself is 0 steps over.
 *
 * @param turns 0 or more
 * @param rpm above 0
 */
export function stepsOfTurns(turns: number, bike: Bike, rpm: Rpm, line: Line): KnobSteps {
  // No turns at all is no rule: base itself, whatever it weighs.
  const exact = turns > 0 ? exactSteps(turns, bike, rpm) : 0
  return Math.max(0, line === 'atLeast' ? Math.ceil(exact - ROUNDING) : Math.floor(exact + ROUNDING))
}

/** The same as a size, of a change or between riders: a knob cannot be turned by less than a step. */
export const sizeOfTurns = (turns: number, bike: Bike, rpm: Rpm): KnobSteps => Math.max(1, stepsOfTurns(turns, bike, rpm, 'atMost'))

/** Steps of every rule asked for, by turns and cadence: rules and songs are few. */
const known = new WeakMap<Bike, Map<Rpm, Map<number, number>>>()

/** Not rounded, and below 0 where the bike's base is heavier; found once for every bike, cadence and rule. */
export function exactSteps(turns: number, bike: Bike, rpm: Rpm): number {
  // Two friction brakes grow with the cadence alike, so that it makes no difference.
  const pace = brakeLawOf(bike) === brakeLawOf(DEFAULT_BIKE) ? DEFAULT_BIKE.referenceRpm : rpm
  const before = known.get(bike)?.get(pace)?.get(turns)
  if (before !== undefined) return before
  const byPace = known.get(bike) ?? new Map<Rpm, Map<number, number>>()
  const byTurns = byPace.get(pace) ?? new Map<number, number>()
  const steps = found(turns, bike, pace)
  known.set(bike, byPace.set(pace, byTurns.set(turns, steps)))
  return steps
}

/** Turns over base up to which the typical knob's watts are known. */
const REACH = calibrationOf(DEFAULT_BIKE).highest - DEFAULT_BIKE.base

function found(turns: number, bike: Bike, rpm: Rpm): number {
  if (turns > REACH) return (found(REACH, bike, rpm) * turns) / REACH
  const setting = DEFAULT_BIKE.base + turns
  const translated = translateSetting(setting, DEFAULT_BIKE, bike, rpm)
  const there = translated.kind === 'reading' ? translated.exact : beyond(bike, wattsAt(calibrationOf(DEFAULT_BIKE), setting, rpm), rpm)
  return there * bike.stepsPerUnit - Math.round(bike.base * bike.stepsPerUnit)
}

/** Where the bike's points do not reach a power: on the line of the two next to it, as far as the knob goes. */
function beyond(bike: Bike, watts: Watts, rpm: Rpm): Setting {
  const calibration = calibrationOf(bike)
  const isAbove = watts > wattsAt(calibration, calibration.highest, rpm)
  const [outer, inner] = isAbove ? ([bike.points.at(-1), bike.points.at(-2)] as const) : ([bike.points[0], bike.points[1]] as const)
  const end = isAbove ? bike.max : (bike.min ?? 0)
  if (!outer || !inner || outer[1] === inner[1]) return end
  const perUnit = (outer[1] - inner[1]) / (outer[0] - inner[0])
  const reached = outer[0] + (atReference(watts, rpm, calibration) - outer[1]) / perUnit
  return Math.min(bike.max, Math.max(bike.min ?? 0, reached))
}

/** The power a bike would have at its reference cadence with the knob where it has so much at another. */
const atReference = (watts: Watts, rpm: Rpm, { referenceRpm, law }: Calibration): Watts => watts / speedFactor(law, rpm / referenceRpm)
