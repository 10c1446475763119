import { OXYGEN } from '#engine/demand/oxygenCost.ts'
import { areaUnder, cutAt, isConstant, quadraticAt } from '#engine/demand/quadratic.ts'
import type { Ridden } from '#engine/demand/ridden.ts'
import { STANDING_COST } from '#engine/demand/standingCost.ts'
import type { Seconds, Watts } from '#units/units.ts'

/** An estimate of the energy a rider spends, kcal. */
export interface EnergyEstimate {
  readonly kcal: number
  /** How much of it goes into the pedals, and so hangs on how right the bike's watts are: 0–1. */
  readonly pedalShare: number
  /** Time-weighted mean uptake, mL/kg/min. */
  readonly meanUptake: number
  /** Seconds of pedalling, and those of them at a power outside the equation's stated 50–200 W. */
  readonly pedalSeconds: Seconds
  readonly outsideSeconds: Seconds
}

type Burning = Pick<Ridden, 'from' | 'to' | 'watts' | 'uptake' | 'turning' | 'standing'>

/** Energy over the spans of a ride: uptake × mass × 5 kcal a litre, integrated exactly. */
export function energySpent(ridden: readonly Burning[], massKg: number): EnergyEstimate {
  let uptake = 0
  let pedalled = 0
  let seconds = 0
  let pedalSeconds = 0
  let outsideSeconds = 0
  for (const span of ridden) {
    const length = span.to - span.from
    seconds += length
    const cost = span.standing ? STANDING_COST.uptake : 1
    uptake += cost * (OXYGEN.rest * length + areaUnder(span.uptake, length))
    if (!span.turning) continue
    pedalled += cost * (OXYGEN.perWattPerKg / massKg) * areaUnder(span.watts, length)
    pedalSeconds += length
    outsideSeconds += secondsOutside(span)
  }
  const kcal = (uptake / 60) * (massKg / 1000) * OXYGEN.kcalPerLitre
  const meanUptake = seconds > 0 ? uptake / seconds : OXYGEN.rest
  return { kcal, pedalShare: uptake > 0 ? pedalled / uptake : 0, meanUptake, pedalSeconds, outsideSeconds }
}

function secondsOutside({ from, to, watts }: Burning): Seconds {
  const length = to - from
  if (isConstant(watts)) return isOutside(watts[0]) ? length : 0
  const cuts = cutAt(watts, OXYGEN.statedRange, length)
  return cuts.slice(1).reduce((sum, end, i) => sum + (isOutside(quadraticAt(watts, (cuts[i]! + end) / 2)) ? end - cuts[i]! : 0), 0)
}

const isOutside = (watts: Watts): boolean => watts < OXYGEN.statedRange[0] || watts > OXYGEN.statedRange[1]
