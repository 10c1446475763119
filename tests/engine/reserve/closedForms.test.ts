import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cutAt, type Quadratic, quadraticAt } from '#engine/demand/quadratic.ts'
import { energySpent } from '#engine/energy/energySpent.ts'
import { RECOVERIES } from '#engine/reserve/recovery.ts'
import { reserveAt, reserveCurve } from '#engine/reserve/reserveCurve.ts'
import { heartCurve } from '#engine/response/heartCurve.ts'
import { INTENSITY_CLASSES } from '#engine/response/intensityClass.ts'
import { secondsByClass } from '#engine/response/minutesByClass.ts'
import { heartShareAt } from '#tests/support/heartShareAt.ts'
import { integrate } from '#tests/support/reference/integrate.ts'

interface Span {
  from: number
  to: number
  watts: Quadratic
}

/** Power as the engine meets it: level, a straight ramp (friction brake), or the square of one (magnetic). */
const arbitraryPower = fc.oneof(
  fc.integer({ min: 0, max: 450 }).map((watts): [number, number, 'level'] => [watts, watts, 'level']),
  fc.tuple(fc.integer({ min: 0, max: 450 }), fc.integer({ min: 0, max: 450 }), fc.constantFrom('friction' as const, 'magnetic' as const)),
)

/** The highest class whose lower bound a share of the heart-rate reserve reaches. */
const classOf = (share: number) => INTENSITY_CLASSES.findLast(({ hrr }) => 100 * share >= hrr)?.name

const spansOf = (pieces: readonly { power: [number, number, string]; seconds: number }[]): Span[] => {
  let end = 0
  return pieces.map(({ power: [first, last, kind], seconds }) => {
    const from = end
    end += seconds
    if (kind === 'magnetic') {
      const [a, b] = [Math.sqrt(first), (Math.sqrt(last) - Math.sqrt(first)) / seconds]
      return { from, to: end, watts: [a * a, 2 * a * b, b * b] }
    }
    return { from, to: end, watts: [first, (last - first) / seconds, 0] }
  })
}

const arbitrarySpans = fc
  .array(fc.record({ power: arbitraryPower, seconds: fc.integer({ min: 3, max: 180 }) }), { minLength: 1, maxLength: 8 })
  .map(spansOf)

const rider = { criticalPower: 200, wPrime: 16_000 }

const powerAt = (spans: readonly Span[], t: number): number => {
  const span = spans.find(({ to }) => t < to) ?? spans.at(-1)!
  return quadraticAt(span.watts, t - span.from)
}

describe('closed forms against an independent integrator', () => {
  const breaksOf = (spans: readonly Span[]) => [
    ...spans.flatMap(({ from, to, watts }) =>
      cutAt(watts, [rider.criticalPower], to - from)
        .slice(0, -1)
        .map((t) => from + t),
    ),
    spans.at(-1)!.to,
  ]

  it('agree on the reserve by the integral form, and on its lowest', () => {
    fc.assert(
      fc.property(arbitrarySpans, (spans) => {
        const curve = reserveCurve(spans, rider, { recovery: 'integral' })
        const end = spans.at(-1)!.to
        const below = Array.from({ length: 20_000 }, (_, i) => powerAt(spans, ((i + 0.5) / 20_000) * end)).filter(
          (p) => p < rider.criticalPower,
        )
        const mean = below.reduce((sum, p) => sum + p, 0) / below.length
        const tau = below.length > 0 ? 546 * Math.exp(-0.01 * (rider.criticalPower - mean)) + 316 : 862
        expect(Math.abs(curve.tau / tau - 1)).toBeLessThan(2e-3)
        const breaks = breaksOf(spans)
        const slope = (t: number, spent: number) => Math.max(0, powerAt(spans, t) - rider.criticalPower) - spent / curve.tau
        const stepped = integrate(slope, 0, breaks, 0.25)
        for (const [i, spent] of stepped.entries()) expect(reserveAt(curve, breaks[i + 1]!)).toBeCloseTo(1 - spent / rider.wPrime, 6)
        const sampled = Math.min(1, ...Array.from({ length: 2000 }, (_, i) => reserveAt(curve, ((i + 1) / 2000) * end)))
        expect(curve.minimum.share).toBeLessThanOrEqual(sampled + 1e-12)
        expect(reserveAt(curve, curve.minimum.at)).toBeCloseTo(curve.minimum.share, 9)
      }),
      { numRuns: 60 },
    )
  })

  it('agree on the reserve by the measured half-time', () => {
    fc.assert(
      fc.property(arbitrarySpans, (spans) => {
        const curve = reserveCurve(spans, rider, { recovery: 'halfTime' })
        const breaks = breaksOf(spans)
        const slope = (t: number, balance: number) => {
          const over = powerAt(spans, t) - rider.criticalPower
          return over >= 0 ? -over : ((rider.wPrime - balance) * Math.LN2) / 234
        }
        const stepped = integrate(slope, rider.wPrime, breaks, 0.25)
        for (const [i, value] of stepped.entries()) expect(reserveAt(curve, breaks[i + 1]!)).toBeCloseTo(value / rider.wPrime, 6)
      }),
      { numRuns: 60 },
    )
  })

  it('agree on the reserve, uncut, to a millionth', () => {
    fc.assert(
      fc.property(arbitrarySpans, (spans) => {
        const curve = reserveCurve(spans, rider)
        // The right-hand side bends where power crosses critical power.
        const breaks = spans.flatMap(({ from, to, watts }) =>
          cutAt(watts, [rider.criticalPower], to - from)
            .slice(0, -1)
            .map((t) => from + t),
        )
        breaks.push(spans.at(-1)!.to)
        const slope = (t: number, balance: number) => {
          const over = powerAt(spans, t) - rider.criticalPower
          return over >= 0 ? -over : (1 - balance / rider.wPrime) * -over
        }
        const stepped = integrate(slope, rider.wPrime, breaks, 0.25)
        for (const [i, value] of stepped.entries()) expect(reserveAt(curve, breaks[i + 1]!)).toBeCloseTo(value / rider.wPrime, 6)
      }),
      { numRuns: 60 },
    )
  })

  it('agree on the heart rate, capped at all of the reserve', () => {
    const share = ([a, b, c]: Quadratic): Quadratic => [a / 280, b / 280, c / 280]
    fc.assert(
      fc.property(arbitrarySpans, fc.integer({ min: 20, max: 90 }), (spans, tau) => {
        const shares = spans.map(({ from, to, watts }) => ({ from, to, share: share(watts) }))
        const curve = heartCurve(shares, tau)
        const breaks = shares.flatMap(({ from, to, share: f }) =>
          cutAt(f, [1], to - from)
            .slice(0, -1)
            .map((t) => from + t),
        )
        breaks.push(spans.at(-1)!.to)
        const slope = (t: number, value: number) => (Math.min(1, powerAt(spans, t) / 280) - value) / tau
        const stepped = integrate(slope, 0, breaks, 0.25)
        for (const [i, value] of stepped.entries()) expect(heartShareAt(curve, breaks[i + 1]!)).toBeCloseTo(value, 6)

        // Its mean, its highest value and the time in classes, against fine sampling.
        const end = spans.at(-1)!.to
        const count = 4000
        const samples = Array.from({ length: count }, (_, i) => heartShareAt(curve, ((i + 0.5) / count) * end))
        expect(samples.reduce((sum, value) => sum + value, 0) / count).toBeCloseTo(curve.mean, 4)
        expect(Math.max(...samples)).toBeLessThanOrEqual(curve.maximum.share + 1e-12)
        expect(heartShareAt(curve, curve.maximum.at)).toBeCloseTo(curve.maximum.share, 9)
        for (const [name, seconds] of Object.entries(secondsByClass(curve.pieces))) {
          const sampled = (samples.filter((value) => classOf(value) === name).length * end) / count
          expect(Math.abs(seconds - sampled)).toBeLessThanOrEqual((8 * end) / count)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('agree on energy', () => {
    fc.assert(
      fc.property(arbitrarySpans, (spans) => {
        const uptake = ([a, b, c]: Quadratic): Quadratic => [(10.8 * a) / 70 + 3.5, (10.8 * b) / 70, (10.8 * c) / 70]
        const { kcal } = energySpent(
          spans.map((span) => ({ ...span, uptake: uptake(span.watts), turning: true, standing: false })),
          70,
        )
        const breaks = [...spans.map(({ from }) => from), spans.at(-1)!.to]
        const perSecond = (t: number) => (((10.8 * powerAt(spans, t)) / 70 + 7) * 70 * 5) / 1000 / 60
        expect(kcal).toBeCloseTo(integrate(perSecond, 0, breaks, 1).at(-1)!, 6)
      }),
      { numRuns: 60 },
    )
  })

  it('name the moment the reserve runs out', () => {
    fc.assert(
      fc.property(arbitrarySpans, fc.constantFrom(...RECOVERIES), (spans, recovery) => {
        const curve = reserveCurve(spans, { criticalPower: 120, wPrime: 5000 }, { recovery })
        if (curve.runsOut === undefined) {
          expect(curve.minimum.share).toBeGreaterThan(-1e-12)
          return
        }
        const { at } = curve.runsOut
        expect(reserveAt(curve, at)).toBeCloseTo(0, 9)
        for (let t = 0; t < at - 1e-6; t += at / 50) expect(reserveAt(curve, t)).toBeGreaterThan(0)
      }),
      { numRuns: 200 },
    )
  })
})

describe('what must hold of the reserve', () => {
  it('a longer recovery at or below critical power never lowers it at its end', () => {
    fc.assert(
      fc.property(
        arbitrarySpans,
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 300 }),
        (spans, watts, seconds, more) => {
          const end = spans.at(-1)!.to
          const withRest = (length: number) => {
            const rest: Span = { from: end, to: end + length, watts: [watts, 0, 0] }
            return reserveAt(reserveCurve([...spans, rest], rider), end + length)
          }
          expect(withRest(seconds + more)).toBeGreaterThanOrEqual(withRest(seconds) - 1e-12)
        },
      ),
    )
  })

  it('stays where it is at critical power, and comes back to full but never past it', () => {
    const at = (watts: number, seconds: number) => {
      const spans: Span[] = [
        { from: 0, to: 60, watts: [300, 0, 0] },
        { from: 60, to: 60 + seconds, watts: [watts, 0, 0] },
      ]
      return reserveAt(reserveCurve(spans, rider), 60 + seconds)
    }
    expect(at(200, 600)).toBeCloseTo(1 - 6000 / 16_000, 12)
    expect(at(0, 100_000)).toBeLessThanOrEqual(1)
    expect(at(0, 100_000)).toBeCloseTo(1, 9)
  })
})
