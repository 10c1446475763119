import { computeRide } from '#engine/computeRide.ts'
import type { RiderReport } from '#engine/report.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Bike, Block, Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import { aBlock, aSection, inSeconds, smallRide } from './smallRide.ts'

/** A ride of blocks measured in seconds, with no minute around them. */
export function blocksOnly(blocks: readonly Partial<Block>[], change: Partial<Ride> = {}): Ride {
  const section = aSection('s', { blocks: blocks.map((block, i) => aBlock(`b${i}`, block)) })
  return { ...smallRide(), briefingSeconds: 0, clearUpSeconds: 0, sections: [section], ...change }
}

interface Steady {
  watts: number
  minutes: number
  rider?: Partial<Rider>
  bike?: Partial<Bike>
  block?: Partial<Block>
}

/** What the page says of one rider at one power, from rest: 55 turns a minute, where legs cost least, on a bike that gives it from one turn on. */
export function steadily({ watts, minutes, rider = {}, bike = {}, block = {} }: Steady): RiderReport {
  const same: [number, number][] = [
    [0, watts],
    [1, watts],
  ]
  const ride = blocksOnly([{ ...inSeconds(60 * minutes), cadence: { rpm: 55 }, ...block }])
  const riders = [{ ...DEFAULT_RIDERS[1]!, ...rider }]
  return computeRide({ ...ride, bike: { ...ride.bike, points: same, referenceRpm: 55, ...bike }, riders }).riders[0]!
}

/** The same of a rider who sits still. */
export const sittingStill = (minutes: number, rider: Partial<Rider> = {}): RiderReport =>
  steadily({ watts: 0, minutes, rider, block: { cadence: 'legsStill' } })
