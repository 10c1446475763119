import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { capacityFromThreeMinutes } from '#engine/riderTest/capacityFromThreeMinutes.ts'
import { capacityFromTrials } from '#engine/riderTest/capacityFromTrials.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Trial } from '#plan/riderModel.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { heartShareAt } from '#tests/support/heartShareAt.ts'
import { noiseOf } from '#tests/support/madeSong.ts'

const cp = fc.double({ min: 80, max: 350, noNaN: true })
const capacity = fc.double({ min: 6_000, max: 30_000, noNaN: true })
const length = fc.integer({ min: 120, max: 900 })

/** The mean power that empties W′ in a time. */
const trial = (seconds: number, criticalPower: number, wPrime: number): Trial => ({ seconds, watts: criticalPower + wPrime / seconds })

const kinds = (result: ReturnType<typeof capacityFromTrials>) => (result.ok ? result.doubts.map(({ kind }) => kind) : result.reason)

describe('all-out trials', () => {
  it('two give critical power and W′ in closed form, with no word on how sure it is', () => {
    fc.assert(
      fc.property(cp, capacity, length, length, (criticalPower, wPrime, a, b) => {
        fc.pre(Math.abs(a - b) > 30)
        const result = capacityFromTrials([trial(a, criticalPower, wPrime), trial(b, criticalPower, wPrime)])
        if (!result.ok) throw new Error(result.reason)
        expect(result.capacity.criticalPower).toBeCloseTo(criticalPower, 6)
        expect(result.capacity.wPrime).toBeCloseTo(wPrime, 3)
        expect(result.capacity.error).toBeNull()
        expect(result.doubts).toContainEqual({ kind: 'onlyTwo' })
      }),
    )
  })

  it('are fitted by least squares: no other line leaves less of the work unexplained', () => {
    fc.assert(
      fc.property(
        cp,
        capacity,
        fc.array(fc.tuple(length, fc.double({ min: 0.97, max: 1.03, noNaN: true })), { minLength: 3, maxLength: 6 }),
        (criticalPower, wPrime, drawn) => {
          const trials = drawn.map(([seconds, off]) => ({ seconds, watts: off * trial(seconds, criticalPower, wPrime).watts }))
          const result = capacityFromTrials(trials)
          fc.pre(result.ok)
          if (!result.ok) return
          const left = (c: number, w: number) =>
            trials.reduce((sum, { seconds, watts }) => sum + (watts * seconds - w - c * seconds) ** 2, 0)
          const best = left(result.capacity.criticalPower, result.capacity.wPrime)
          for (const [dc, dw] of [
            [0.5, 0],
            [-0.5, 0],
            [0, 200],
            [0, -200],
            [0.5, -300],
            [-0.5, 300],
          ] as const) {
            expect(left(result.capacity.criticalPower + dc, result.capacity.wPrime + dw)).toBeGreaterThanOrEqual(best)
          }
        },
      ),
    )
  })

  it('have standard errors that hold the truth as often as they should', () => {
    const noise = noiseOf(5)
    let held = 0
    const times = 1_000
    for (let i = 0; i < times; i++) {
      const trials = [180, 300, 420, 720, 900].map((seconds) => ({
        seconds,
        watts: 200 + (16_000 + 800 * (noise() + noise() + noise())) / seconds,
      }))
      const result = capacityFromTrials(trials)
      if (!result.ok) throw new Error(result.reason)
      // Student's t with three degrees of freedom: 3.18 standard errors hold 95 %.
      if (Math.abs(result.capacity.criticalPower - 200) <= 3.182 * result.capacity.error!.criticalPower) held++
    }
    expect(held / times).toBeGreaterThan(0.93)
    expect(held / times).toBeLessThan(0.97)
  })

  it('agree with the figures of a textbook regression', () => {
    // Work 60, 96, 168 kJ at 180, 360, 720 s: on one line, CP 200 W and W′ 24 kJ.
    const result = capacityFromTrials(
      [60_000, 96_000, 168_000].map((work, i) => ({ seconds: [180, 360, 720][i]!, watts: work / [180, 360, 720][i]! })),
    )
    expect(result.ok && result.capacity.criticalPower).toBeCloseTo(200, 9)
    expect(result.ok && result.capacity.wPrime).toBeCloseTo(24_000, 6)
    expect(result.ok && result.capacity.error!.criticalPower).toBeCloseTo(0, 6)
    expect(kinds(result)).toEqual([])
  })

  it.each<[string, Trial[], unknown]>([
    ['none and one are too few', [{ seconds: 180, watts: 250 }], 'tooFew'],
    [
      'of one length say nothing',
      [
        { seconds: 300, watts: 250 },
        { seconds: 300, watts: 240 },
      ],
      'sameLength',
    ],
    [
      'that do not fall were not all out',
      [
        { seconds: 180, watts: 250 },
        { seconds: 720, watts: 250 },
      ],
      'notFalling',
    ],
    [
      'that rise were not all out',
      [
        { seconds: 180, watts: 250 },
        { seconds: 720, watts: 270 },
      ],
      'notFalling',
    ],
    [
      'that fall too fast leave no critical power',
      [
        { seconds: 180, watts: 250 },
        { seconds: 720, watts: 60 },
      ],
      'notFalling',
    ],
    ['short, long', [trial(60, 200, 15_000), trial(1200, 200, 15_000)], ['short', 'long', 'onlyTwo']],
    ['all short, and near each other', [trial(300, 200, 15_000), trial(500, 200, 15_000)], ['allShort', 'alike', 'onlyTwo']],
    ['with an unusual capacity', [trial(180, 200, 3_000), trial(720, 200, 3_000)], ['onlyTwo', 'unusual']],
    ['that do not agree', [trial(180, 200, 15_000), trial(420, 240, 15_000), trial(720, 190, 15_000)], ['apart']],
    ['that do', [trial(180, 200, 15_000), trial(420, 201, 15_000), trial(720, 199, 15_000)], []],
  ])('%s', (_name, trials, expected) => {
    expect(kinds(capacityFromTrials(trials))).toEqual(expected)
  })
})

describe('three minutes all out', () => {
  it('give the end as critical power and the work above it as W′, from the whole mean or from all but the end', () => {
    fc.assert(
      fc.property(cp, capacity, (criticalPower, wPrime) => {
        const whole = capacityFromThreeMinutes({ over: 180, watts: criticalPower + wPrime / 180, endWatts: criticalPower })
        const part = capacityFromThreeMinutes({ over: 150, watts: criticalPower + wPrime / 150, endWatts: criticalPower })
        for (const result of [whole, part]) {
          if (!result.ok) throw new Error(result.reason)
          expect(result.capacity.criticalPower).toBe(criticalPower)
          expect(result.capacity.wPrime).toBeCloseTo(wPrime, 6)
        }
      }),
    )
  })

  it('are doubted where power peaked late or hardly fell, and give nothing where the end is the mean', () => {
    const at = (test: Partial<Parameters<typeof capacityFromThreeMinutes>[0]>) =>
      capacityFromThreeMinutes({ over: 180, watts: 300, endWatts: 210, ...test })
    expect(at({})).toMatchObject({ ok: true, doubts: [], capacity: { criticalPower: 210, wPrime: 16_200 } })
    expect(at({ peakSecond: 8 })).toMatchObject({ doubts: [] })
    expect(at({ peakSecond: 40 })).toMatchObject({ doubts: [{ kind: 'latePeak', peakSecond: 40 }] })
    expect(at({ endWatts: 290 })).toMatchObject({ doubts: [{ kind: 'paced' }, { kind: 'unusual' }] })
    expect(at({ endWatts: 300 })).toEqual({ ok: false, reason: 'notFalling' })
  })
})

describe('thresholds', () => {
  const report = (thresholds: { firstThresholdHr?: number; secondThresholdHr?: number }) => {
    const riders = DEFAULT_RIDERS.map((rider) => (rider.id === 'regular' ? { ...rider, ...thresholds } : rider))
    return computeRide({ ...demoRide('spark'), riders }).riders[1]!.response
  }

  it('part the predicted heart rate as a stepping reference does', () => {
    const response = report({ firstThresholdHr: 120, secondThresholdHr: 150 })
    const { under, between, over } = response.secondsByThreshold!
    const steps = [0, 0, 0]
    const [start, end] = [response.pieces[0]!.from, response.pieces.at(-1)!.to]
    for (const piece of response.pieces) {
      for (let at = piece.from; at < piece.to; at += 0.05) {
        const beats = response.range.rest + heartShareAt(response, Math.min(at, piece.to)) * (response.range.max - response.range.rest)
        steps[beats < 120 ? 0 : beats < 150 ? 1 : 2]! += Math.min(0.05, piece.to - at)
      }
    }
    expect(under).toBeCloseTo(steps[0]!, 0)
    expect(between).toBeCloseTo(steps[1]!, 0)
    expect(over).toBeCloseTo(steps[2]!, 0)
    expect(under! + between! + over!).toBeCloseTo(end - start, 6)
    expect(between).toBeGreaterThan(60)
  })

  it('say only what the known one bounds, and nothing where there is none', () => {
    expect(report({})).not.toHaveProperty('secondsByThreshold')
    const both = report({ firstThresholdHr: 120, secondThresholdHr: 150 }).secondsByThreshold!
    expect(report({ firstThresholdHr: 120 }).secondsByThreshold).toEqual({ under: both.under, between: null, over: null })
    expect(report({ secondThresholdHr: 150 }).secondsByThreshold).toEqual({ under: null, between: null, over: both.over })
  })
})
