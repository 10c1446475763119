import { ridersOf } from '#engine/assembly/reportRiders.ts'
import { calibrationOf, wattsAt } from '#engine/demand/calibration.ts'
import { standingBonus } from '#engine/demand/demandOfBlock.ts'
import { riderSetting } from '#engine/demand/riderSetting.ts'
import type { RideReport } from '#engine/report.ts'
import { maximumOf } from '#engine/response/heartMaximum.ts'
import type { BeatGrid, Ride } from '#plan/model.ts'
import { HEART_TAU } from '#tests/support/driftingRide.ts'
import { effortOfReserve } from './effortOfReserve.ts'
import { BEATS_STANDING, oxygenUptake } from './oxygenCost.ts'

/** Seconds. Steps also end wherever a block or the tempo changes, so that no step has two tempi in it. */
const STEP = 0.1
/** Oxygen uptake at rest, mL/kg/min: one MET. */
const AT_REST = 3.5

/** One rider of a ride whose songs drift and have odd bars, stepped. */
interface DriftingRider {
  /** By played block: mean effort and watts. */
  effort: number[]
  watts: number[]
  /** Every second of the ride. */
  heart: number[]
  reserve: number[]
}

/** Beats of a song at its anchors, counted out one by one: every count is a beat, but for those missing, and those over are more. */
function beatsAtAnchors({ anchors, odd = [] }: BeatGrid): number[] {
  let [count, beat] = [anchors[0]![0], 0]
  return anchors.map(([to]) => {
    while (count < to) {
      count++
      beat++
      for (const [at, beats] of odd) if (at === count) beat += beats
    }
    return beat
  })
}

/** Tempo at a second of a song, by looking through its anchors. */
function tempoAt(grid: BeatGrid, beats: readonly number[], second: number): number {
  const { anchors } = grid
  let i = 0
  while (i < anchors.length - 2 && anchors[i + 1]![1] <= second) i++
  return (60 * (beats[i + 1]! - beats[i]!)) / (anchors[i + 1]![1] - anchors[i]![1])
}

/**
 * Effort, watts, heart and reserve of the ride's riders, stepped by tenths of a second with the tempo looked up at each. Independent of
 * the engine's pieces: of it only where blocks begin, what the knob stands at, and the bike's power are taken.
 */
export function stepDrifting(ride: Ride, report: RideReport): DriftingRider[] {
  const { blocks, sections } = report
  const moments = momentsOf(ride, report)
  const calibration = calibrationOf(ride.bike)
  const beats = ride.sections.map(({ song }) => beatsAtAnchors(song!.grid!))
  return ridersOf(ride).map((rider) => {
    const effort = blocks.map(() => 0)
    const watts = blocks.map(() => 0)
    const heart: number[] = []
    const reserve: number[] = []
    let [share, balance, index] = [0, rider.wPrime, 0]
    for (const [n, from] of moments.slice(0, -1).entries()) {
      const length = moments[n + 1]! - from
      const t = from + length / 2
      if (Number.isInteger(from)) {
        heart.push(share)
        reserve.push(balance / rider.wPrime)
      }
      while (index < blocks.length - 1 && t >= blocks[index]!.to) index++
      const played = blocks[index]!
      const { song } = ride.sections[played.section]!
      const second = song!.grid!.anchors[0]![1] + t - sections[played.section]!.one
      const rpm = (tempoAt(song!.grid!, beats[played.section]!, second) * song!.strikesPerBeat!) / 2
      const power = wattsAt(calibration, riderSetting(ride.bike, ride.datum, rider, played.ledger.after.nominal), rpm)
      const wanted = (oxygenUptake(power, rider.massKg, rpm) - AT_REST) / (rider.vo2max - AT_REST)
      const lift = played.block.posture === 'standing' ? BEATS_STANDING / (maximumOf(rider) - rider.restingHr) : 0
      const part = length / (played.to - played.from)
      effort[index]! += Math.min(10, effortOfReserve(wanted) + standingBonus(played.block)) * part
      watts[index]! += power * part
      share += (Math.min(1, wanted + lift) - share) * -Math.expm1(-length / HEART_TAU)
      const over = power - rider.criticalPower
      balance = over >= 0 ? balance - over * length : rider.wPrime - (rider.wPrime - balance) * Math.exp((over * length) / rider.wPrime)
    }
    return { effort, watts, heart, reserve }
  })
}

/** Every tenth of a second, every start of a block, and every anchor of every song, on the ride clock. */
function momentsOf(ride: Ride, { blocks, sections, overall }: RideReport): number[] {
  const anchors = ride.sections.flatMap(({ song }, i) => {
    const [[, first]] = song!.grid!.anchors as [[number, number]]
    return song!.grid!.anchors.map(([, second]) => sections[i]!.one + second - first)
  })
  const tenths = Array.from({ length: Math.ceil(overall.total / STEP) }, (_, i) => Number((i * STEP).toFixed(1)))
  const all = [...tenths, ...anchors, ...blocks.map(({ from }) => from), overall.total].filter((at) => at >= 0 && at <= overall.total)
  return [...new Set(all)].sort((a, b) => a - b)
}
