import { describe, expect, it } from 'vitest'
import type { Range } from '#engine/band/riderBand.ts'
import { computeRide } from '#engine/computeRide.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { type Drawn, drawnRiders, type Spread } from '#tests/support/drawnRiders.ts'
import { heartShareAt } from '#tests/support/heartShareAt.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { SEED } from '#tests/support/seed.ts'

/** The demo rides, and rides as people write them. */
const RIDES = [demoRide('spark'), demoRide('ridge'), ...[1, 2].map((n) => plausibleRide(SEED + n))].map((ride) => ({
  ...ride,
  riders: [...DEFAULT_RIDERS],
}))
const DRAWS = 100
const MOMENTS = 40

const isIn = (value: number, { low, high }: Range) => value >= low - 1e-9 && value <= high + 1e-9

/**
 * How many of a hundred drawn bikes and riders lie inside, by estimate: for curves at the moment, for demand in the block,
 * at which the fewest do. Watts, critical power, W′, highest uptake, highest heart rate and the energy model are drawn
 * independently within their stated errors; so are the heat of the room and the recovery a rider has.
 */
function insideOf(ride: (typeof RIDES)[number], rider: number, spread: Spread, seed: number): Record<string, number> {
  const report = computeRide(ride)
  const { band, demand } = report.riders[rider]!
  const draws = drawnRiders(ride, rider, spread, DRAWS, seed)
  const moments = Array.from({ length: MOMENTS }, (_, i) => ((i + 0.5) / MOMENTS) * report.overall.total)
  const count = (inside: (drawn: Drawn) => boolean) => draws.filter(inside).length
  const highest = (drawn: Drawn) => Math.max(...moments.map(drawn.beatsAt))
  return {
    demand: Math.min(
      ...demand.flatMap((asked, i) => {
        const range = { low: band.demand.low[i]?.mean ?? 0, high: band.demand.high[i]?.mean ?? 0 }
        return asked === null ? [] : [count(({ report: real }) => isIn(real.demand[i]!.mean, range))]
      }),
    ),
    heart: Math.min(...moments.map((at) => count(({ report: real }) => isIn(heartShareAt(real.response, at), band.heartAt(at))))),
    'highest heart': count((drawn) => isIn(highest(drawn), band.heart.highest.beats)),
    reserve: Math.min(...moments.map((at) => count((drawn) => isIn(drawn.reserveAt(at), band.reserveAt(at))))),
    'lowest reserve': count(({ lowestReserve }) => isIn(lowestReserve, band.lowestReserve)),
    energy: count(({ kcal }) => isIn(kcal, band.energy)),
  }
}

const places = RIDES.flatMap((_, ride) => DEFAULT_RIDERS.map((__, rider) => ({ ride, rider })))

describe('nine of ten drawn bikes and riders lie inside the bands', () => {
  it('on every ride, for every rider and estimate, where errors are spread evenly', () => {
    for (const { ride, rider } of places) {
      const inside = insideOf(RIDES[ride]!, rider, 'even', SEED + 10 * ride + rider)
      for (const [estimate, many] of Object.entries(inside))
        expect(many, `${estimate}, ride ${ride}, rider ${rider}`).toBeGreaterThanOrEqual(90)
    }
  })

  it('on the whole, where they have long tails; and not all of them do, or the bands would say nothing', () => {
    const found = places
      .filter(({ ride }) => ride % 2 === 0)
      .map(({ ride, rider }) => insideOf(RIDES[ride]!, rider, 'normal', SEED + 10 * ride + rider))
    for (const estimate of Object.keys(found[0]!)) {
      const mean = found.reduce((sum, one) => sum + one[estimate]!, 0) / found.length
      expect(mean, estimate).toBeGreaterThanOrEqual(90)
      expect(mean, estimate).toBeLessThan(100)
    }
  })
})
