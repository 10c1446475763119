import type { Bike, Rider } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Effort, Rpm, Setting, Watts } from '#units/units.ts'
import { reserveOfEffort } from './effortOfReserve.ts'
import { OXYGEN, wattsForUptake } from './oxygenCost.ts'

/** What the console showed at a setting and a cadence. */
export interface WattsReading {
  setting: Setting
  rpm: Rpm
  watts: Watts
}

/** How hard a setting felt to a rider at a cadence, seated. */
export interface FeelReading {
  setting: Setting
  rpm: Rpm
  effort: Effort
}

/** A bike's curve as found; `exponent` is null where no setting was read at two cadences. */
export type CalibrationFound =
  | { ok: true; brake: Bike['brake']; points: Bike['points']; exponent: number | null }
  | { ok: false; problem: string }

/** Cadences this near say nothing of the brake. */
const LEAST_SPREAD = 1.1

/**
 * A bike's points at its reference cadence from readings of its console. Settings read at two
 * cadences tell the brake: power in proportion to cadence is friction, to its square magnetic;
 * what was found is the nearer of the two. Without such a pair the brake is taken as given.
 */
export function calibrateByWatts(readings: readonly WattsReading[], bike: Pick<Bike, 'referenceRpm' | 'brake' | 'unit'>): CalibrationFound {
  const odd = readings.find(({ setting, rpm, watts }) => !(rpm > 0 && watts >= 0 && Number.isFinite(setting)))
  if (odd) return { ok: false, problem: 'A reading needs a cadence above 0 and watts from 0 on.' }
  const exponent = exponentOf(readings)
  const brake = exponent === null ? bike.brake : exponent < 1.5 ? 'friction' : 'magnetic'
  const power = brake === 'friction' ? 1 : 2
  const bySetting = new Map<Setting, Watts[]>()
  for (const { setting, rpm, watts } of readings) {
    const atReference = watts * (bike.referenceRpm / rpm) ** power
    bySetting.set(setting, [...(bySetting.get(setting) ?? []), atReference])
  }
  const points = [...bySetting]
    .map(([setting, all]): [Setting, Watts] => [setting, all.reduce((a, b) => a + b, 0) / all.length])
    .sort(([a], [b]) => a - b)
  return checked(points, brake, exponent, bike.unit)
}

/**
 * The same by feel: what a rider felt at two cadences is turned into the watts that cost this
 * rider as much. As rough as a feeling is, and good enough where a console shows nothing.
 */
export function calibrateByFeel(
  readings: readonly FeelReading[],
  rider: Pick<Rider, 'massKg' | 'vo2max'>,
  bike: Pick<Bike, 'referenceRpm' | 'brake' | 'unit'>,
): CalibrationFound {
  const watts = readings.map(({ setting, rpm, effort }) => ({ setting, rpm, watts: wattsOfFeel(effort, rider) }))
  return calibrateByWatts(watts, bike)
}

function wattsOfFeel(effort: Effort, { massKg, vo2max }: Pick<Rider, 'massKg' | 'vo2max'>): Watts {
  const uptake = OXYGEN.rest + reserveOfEffort(effort) * (vo2max - OXYGEN.rest)
  return Math.max(0, wattsForUptake(uptake, massKg))
}

/** Mean slope of log power over log cadence, over all settings read at cadences far enough apart; null without one. */
function exponentOf(readings: readonly WattsReading[]): number | null {
  const slopes = readings.flatMap((a, i) =>
    readings.slice(i + 1).flatMap((b) => {
      const spread = Math.max(a.rpm, b.rpm) / Math.min(a.rpm, b.rpm)
      if (a.setting !== b.setting || spread < LEAST_SPREAD || !(a.watts > 0 && b.watts > 0)) return []
      return [Math.log(b.watts / a.watts) / Math.log(b.rpm / a.rpm)]
    }),
  )
  return slopes.length === 0 ? null : slopes.reduce((sum, slope) => sum + slope, 0) / slopes.length
}

function checked(points: Bike['points'], brake: Bike['brake'], exponent: number | null, unit: string): CalibrationFound {
  if (points.length < 2) return { ok: false, problem: 'Read at least two settings.' }
  const falls = points.findIndex(([, watts], i) => i > 0 && watts < points[i - 1]![1])
  if (falls > 0) {
    const [[low, less], [high, more]] = [points[falls]!, points[falls - 1]!]
    const said = `${formatNumber(low)} ${unit}s came out lighter (${formatNumber(less, 0)} W) than ${formatNumber(high)} (${formatNumber(more, 0)} W)`
    return { ok: false, problem: `${said}; read these two again.` }
  }
  const rounded = points.map(([setting, watts]): [Setting, Watts] => [setting, Math.round(watts * 10) / 10])
  return { ok: true, brake, points: rounded, exponent }
}
