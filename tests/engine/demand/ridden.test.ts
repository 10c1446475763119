import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Bike, Block, Ride } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import { heartShareAt } from '#tests/support/heartShareAt.ts'
import { effortOfReserve } from '#tests/support/reference/effortOfReserve.ts'
import { integrate } from '#tests/support/reference/integrate.ts'
import { BEATS_STANDING, kcalPerMinute, oxygenUptake, uptakeStanding } from '#tests/support/reference/oxygenCost.ts'
import { blocksOnly, steadily } from '#tests/support/reported.ts'
import { aBlock, aSection, inSeconds } from '#tests/support/smallRide.ts'

const RIDER: Rider = DEFAULT_RIDERS[1]!
/** 40 W a turn at 80 turns of the legs, a knot at every turn. */
const bikeWith = (brake: Bike['brake']): Partial<Bike> => ({
  brake,
  referenceRpm: 80,
  points: [1, 2, 3, 4, 5, 6].map((turns): [number, number] => [turns, 40 * turns]),
})
const at = (turns: number) => ({ kind: 'total', from: 4 * turns, to: 4 * turns }) as const

const rideOn = (brake: Bike['brake'], blocks: Partial<Block>[]): Ride => {
  const ride = blocksOnly(blocks, { datum: 'loose', riders: [RIDER] })
  return { ...ride, bike: { ...ride.bike, ...bikeWith(brake) } }
}
const riderOf = (ride: Ride) => computeRide(ride).riders[0]!

/** Power by the brake's own law, from the definition: in proportion to the cadence, or to its square. */
const powerOf = (brake: Bike['brake'], turns: number, rpm: number) => 40 * turns * (rpm / 80) ** (brake === 'friction' ? 1 : 2)
const shareOf = (watts: number, rpm?: number) => (oxygenUptake(watts, RIDER.massKg, rpm) - 3.5) / (RIDER.vo2max - 3.5)

/** Its area over a time, by Simpson's rule in pieces of a hundredth of the whole. */
function area(of: (t: number) => number, seconds: number): number {
  const h = seconds / 2000
  return (
    (h / 3) * Array.from({ length: 2001 }, (_, i) => (i === 0 || i === 2000 ? 1 : i % 2 ? 4 : 2) * of(i * h)).reduce((a, b) => a + b, 0)
  )
}

describe.each(['friction', 'magnetic'] as const)('a ramp of cadence on a %s brake', (brake) => {
  const anyRamp = fc.record({
    from: fc.integer({ min: 40, max: 130 }),
    to: fc.integer({ min: 40, max: 130 }),
    seconds: fc.integer({ min: 20, max: 300 }),
    turns: fc.integer({ min: 1, max: 6 }),
    standing: fc.boolean(),
  })

  it('gives power, demand, energy, heart and reserve of every moment on the way', () => {
    fc.assert(
      fc.property(anyRamp, ({ from, to, seconds, turns, standing }) => {
        const posture = standing ? 'standing' : 'seated'
        const ride = rideOn(brake, [{ ...inSeconds(seconds), cadence: { rpm: from, rampTo: to }, resistance: at(turns), posture }])
        const { demand, energy, response, reserve } = riderOf(ride)
        const pace = (t: number) => from + ((to - from) * t) / seconds
        const watts = (t: number) => powerOf(brake, turns, pace(t))
        const share = (t: number) => shareOf(watts(t), pace(t))
        const uptake = (t: number) => oxygenUptake(watts(t), RIDER.massKg, pace(t))
        expect(demand[0]!.watts).toBeCloseTo(area(watts, seconds) / seconds, 6)
        // The mapping bends, so the areas of its pieces are only near those of the steps.
        const effort = (t: number) => Math.min(10, effortOfReserve(share(t)) + (standing ? 0.5 : 0))
        expect(demand[0]!.mean).toBeCloseTo(area(effort, seconds) / seconds, 3)
        expect(energy.kcal).toBeCloseTo(
          area((t) => kcalPerMinute(standing ? uptakeStanding(uptake(t)) : uptake(t), RIDER.massKg) / 60, seconds),
          6,
        )
        const tau = constantsOf({}).heartRateTau
        const lift = standing ? BEATS_STANDING / (response.range.max - response.range.rest) : 0
        const [heart] = integrate((t, value) => (Math.min(1, share(t) + lift) - value) / tau, 0, [0, seconds], 0.1)
        expect(heartShareAt(response, seconds)).toBeCloseTo(heart!, 4)
        const over = (t: number) => watts(t) - RIDER.criticalPower
        const [left] = integrate(
          (t, value) => (over(t) >= 0 ? -over(t) : (1 - value / RIDER.wPrime) * -over(t)),
          RIDER.wPrime,
          [0, seconds],
          0.1,
        )
        expect(reserve.minimum.share).toBeLessThanOrEqual(left! / RIDER.wPrime + 1e-4)
        if (from <= to) expect(reserve.minimum.share).toBeCloseTo(Math.min(1, left! / RIDER.wPrime), 4)
      }),
      { numRuns: 60 },
    )
  })

  it('is ridden on as it ended through the gap to the next song', () => {
    const ramp = aBlock('ramp', { ...inSeconds(60), cadence: { rpm: 60, rampTo: 120 }, resistance: at(3) })
    const after = aBlock('after', { ...inSeconds(60), cadence: { rpm: 80 }, resistance: at(2) })
    const sections = [aSection('one', { blocks: [ramp] }), aSection('two', { leadInSeconds: 20, blocks: [after] })]
    const { energy } = riderOf({ ...rideOn(brake, []), sections })
    const kcal = (turns: number, rpm: number, seconds: number) =>
      (kcalPerMinute(oxygenUptake(powerOf(brake, turns, rpm), RIDER.massKg, rpm), RIDER.massKg) * seconds) / 60
    const expected = area((t) => kcal(3, 60 + t, 1), 60) + kcal(3, 120, 20) + kcal(2, 80, 60)
    expect(energy.kcal).toBeCloseTo(expected, 6)
  })
})

describe('where no cadence is known', () => {
  it('a rider is taken to give what is asked, through a gap too, and no demand is said', () => {
    const asked = aBlock('asked', { ...inSeconds(60), effort: { from: 4, to: 8 } })
    const then = aBlock('then', { ...inSeconds(60), effort: { from: 5, to: 5 } })
    const sections = [aSection('one', { blocks: [asked] }), aSection('two', { leadInSeconds: 20, blocks: [then] })]
    const { energy, demand } = riderOf({ ...rideOn('friction', []), sections })
    expect(demand).toEqual([null, null])
    // Effort 6 on the way from 4 to 8 is 0.675 of the reserve, 8 is 0.825, and 5 is 0.6.
    const kcal = (share: number, seconds: number) => (kcalPerMinute(3.5 + share * (RIDER.vo2max - 3.5), RIDER.massKg) * seconds) / 60
    expect(energy.kcal).toBeCloseTo(kcal(0.675, 60) + kcal(0.825, 20) + kcal(0.6, 60), 9)
  })

  it('and off the bike or with legs still there is rest', () => {
    for (const block of [{ posture: 'offBike' as const }, { cadence: 'legsStill' as const }]) {
      const { energy, response } = steadily({ watts: 200, minutes: 5, block: { cadence: undefined, ...block } })
      expect([energy.meanUptake, response.maximum.share]).toEqual([3.5, 0])
    }
  })
})

describe('effort by how one rides', () => {
  it.each([
    ['seated', undefined, 0],
    ['hovering', undefined, 0],
    ['standing', undefined, 0.5],
    ['standing', { name: 'jumps', counts: 8 }, 0.8],
    ['seated', { name: 'press', counts: 8 }, 0],
  ] as const)('%s with the move %o: %d more', (posture, move, more) => {
    const watts = 120
    const { demand } = steadily({ watts, minutes: 1, rider: RIDER, block: { posture, ...(move && { move }) } })
    expect(demand[0]!.mean).toBeCloseTo(effortOfReserve(shareOf(watts)) + more, 9)
    expect(demand[0]!.watts).toBe(watts)
  })
})
