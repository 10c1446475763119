import { OXYGEN } from '#engine/demand/oxygenCost.ts'
import { areaUnder, cutAt, isConstant, quadraticAt } from '#engine/demand/quadratic.ts'
import type { Ridden } from '#engine/demand/ridden.ts'
import type { Seconds, Watts } from '#units/units.ts'

/** Share by which an energy figure may be off either way (common practice for such equations). */
export const ENERGY_ERROR = 0.15

/** An estimate of the energy a rider spends, kcal. */
export interface EnergyEstimate {
  kcal: number
  /** ±15 %. */
  low: number
  high: number
  /** Time-weighted mean uptake, mL/kg/min. */
  meanUptake: number
  /** Seconds of pedalling at a power outside the equation's stated 50–200 W. */
  outsideSeconds: Seconds
}

type Burning = Pick<Ridden, 'from' | 'to' | 'watts' | 'turning'>

/** Energy over the spans of a ride: uptake × mass × 5 kcal a litre, integrated exactly. */
export function energyOf(ridden: readonly Burning[], massKg: number): EnergyEstimate {
  let uptake = 0
  let seconds = 0
  let outsideSeconds = 0
  for (const span of ridden) {
    const length = span.to - span.from
    seconds += length
    uptake += OXYGEN.rest * length
    if (!span.turning) continue
    uptake += OXYGEN.unloaded * length + (OXYGEN.perWattPerKg / massKg) * areaUnder(span.watts, length)
    outsideSeconds += secondsOutside(span)
  }
  const kcal = (uptake / 60) * (massKg / 1000) * OXYGEN.kcalPerLitre
  const meanUptake = seconds > 0 ? uptake / seconds : OXYGEN.rest
  return { kcal, low: kcal * (1 - ENERGY_ERROR), high: kcal * (1 + ENERGY_ERROR), meanUptake, outsideSeconds }
}

function secondsOutside({ from, to, watts }: Burning): Seconds {
  const length = to - from
  if (isConstant(watts)) return isOutside(watts[0]) ? length : 0
  const cuts = cutAt(watts, OXYGEN.statedRange, length)
  return cuts.slice(1).reduce((sum, end, i) => sum + (isOutside(quadraticAt(watts, (cuts[i]! + end) / 2)) ? end - cuts[i]! : 0), 0)
}

const isOutside = (watts: Watts): boolean => watts < OXYGEN.statedRange[0] || watts > OXYGEN.statedRange[1]
