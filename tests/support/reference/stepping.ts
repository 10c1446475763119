import { ridersOf } from '#engine/assembly/reportRiders.ts'
import type { Constants } from '#engine/constants.ts'
import { calibrationOf, wattsAt } from '#engine/demand/calibration.ts'
import { OXYGEN } from '#engine/demand/oxygenCost.ts'
import { riderSetting } from '#engine/demand/riderSetting.ts'
import type { PlayedBlock, Span } from '#engine/played.ts'
import { maximumOf } from '#engine/response/heartMaximum.ts'
import type { Ride } from '#plan/model.ts'
import { effortOfReserve } from './effortOfReserve.ts'
import { integralTau, meanBelow, type PowerStep } from './integralForm.ts'
import { BEATS_STANDING, kcalPerMinute, oxygenUptake, uptakeStanding } from './oxygenCost.ts'

/** The models of the engine, stepped second by second: a yardstick, never used by the engine. */

const eachSecond = (steps: readonly PowerStep[]) => steps.flatMap(([watts, seconds]) => Array<number>(seconds).fill(watts))

const atStepEnds = (steps: readonly PowerStep[], values: readonly number[]): number[] => {
  let end = 0
  return steps.map(([, seconds]) => {
    end += seconds
    return values[end - 1]!
  })
}

/** Differential form, one-second Euler steps. */
export function eulerBalance(steps: readonly PowerStep[], criticalPower: number, wPrime: number): number[] {
  let balance = wPrime
  const values = eachSecond(steps).map((watts) => {
    balance += watts >= criticalPower ? criticalPower - watts : (1 - balance / wPrime) * (criticalPower - watts)
    return balance
  })
  return atStepEnds(steps, values)
}

/** Integral form, one-second sums, the newest second undecayed. */
export function summedBalance(steps: readonly PowerStep[], criticalPower: number, wPrime: number): number[] {
  const fade = Math.exp(-1 / integralTau(meanBelow(steps, criticalPower)))
  let spent = 0
  const values = eachSecond(steps).map((watts) => {
    spent = spent * fade + Math.max(0, watts - criticalPower)
    return wPrime - spent
  })
  return atStepEnds(steps, values)
}

/** Demand, heart rate, reserve and energy of the ride's riders, each second looked up and stepped. */
export function stepRiders(ride: Ride, spans: readonly Span[], blocks: readonly PlayedBlock[], rules: Constants): Stepped[] {
  const calibration = calibrationOf(ride.bike)
  return ridersOf(ride).map((rider) => {
    const demand: number[] = []
    const heart: number[] = []
    const reserve: number[] = []
    let share = 0
    let balance = rider.wPrime
    let kcal = 0
    let last: PlayedBlock | undefined
    for (const span of spans) {
      if (span.block !== undefined) last = blocks[span.block]
      const played = span.kind === 'briefing' || span.kind === 'clearUp' ? undefined : last
      for (let t = span.from; t < span.to; t++) {
        const rpm = played?.cadence.kind === 'turning' ? played.cadence.from : 0
        const setting = played ? riderSetting(ride.bike, ride.datum, rider, played.ledger.after.nominal) : 0
        const watts = rpm > 0 ? wattsAt(calibration, setting, rpm) : 0
        const uptake = rpm > 0 ? oxygenUptake(watts, rider.massKg, rpm) : OXYGEN.rest
        const standing = rpm > 0 && played?.block.posture === 'standing'
        const wanted = (uptake - OXYGEN.rest) / (rider.vo2max - OXYGEN.rest)
        demand.push(effortOfReserve(wanted))
        const beats = standing ? BEATS_STANDING / (maximumOf(rider) - rider.restingHr) : 0
        share += (Math.min(1, wanted + beats) - share) / rules.heartRateTau
        const over = watts - rider.criticalPower
        balance -= over >= 0 ? over : (1 - balance / rider.wPrime) * over
        kcal += kcalPerMinute(standing ? uptakeStanding(uptake) : uptake, rider.massKg) / 60
        heart.push(share)
        reserve.push(balance / rider.wPrime)
      }
    }
    return { demand, heart, reserve, kcal }
  })
}

/** One rider, second by second. */
export interface Stepped {
  demand: number[]
  heart: number[]
  reserve: number[]
  kcal: number
}
