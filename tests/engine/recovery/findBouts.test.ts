import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import type { EffortLine } from '#engine/recovery/effortLines.ts'
import { findBouts } from '#engine/recovery/findBouts.ts'
import { recoveryNeed } from '#engine/recovery/recoveryNeed.ts'
import type { Level } from '#plan/model.ts'
import { aBlock, aSection, aSet, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const RULES = constantsOf({})
type Step = [seconds: number, start: number, end?: number]

/** Lines one after the other, two seconds of lead-in before each. */
function linesOf(steps: readonly Step[]): EffortLine[] {
  let clock = 0
  return steps.map(([seconds, start, end = start], block) => {
    clock += 2
    const line = { block, from: clock, to: clock + seconds, start, end, allOut: false }
    clock += seconds
    return line
  })
}
const boutsOf = (steps: readonly Step[], level: Level = 'advanced') => findBouts(linesOf(steps), level, RULES).bouts

// Common practice: twice a short hardest bout, one and a half times a longer one, once a hard one.
describe('the recovery a bout needs', () => {
  it.each([
    [{ work: 20, peak: 9, allOut: false }, 'advanced', 40],
    [{ work: 21, peak: 9, allOut: false }, 'advanced', 31.5],
    [{ work: 30, peak: 8, allOut: false }, 'advanced', 30],
    [{ work: 10, peak: 8, allOut: false }, 'advanced', 15],
    [{ work: 10, peak: 8, allOut: false }, 'mixed', 30],
    [{ work: 10, peak: 8, allOut: false }, 'beginner', 45],
    [{ work: 10, peak: 10, allOut: true }, 'advanced', 120],
    [{ work: 30, peak: 10, allOut: true }, 'advanced', 90],
    [{ work: 12.5, peak: 10, allOut: true }, 'advanced', 12.5 * 7.5],
    [{ work: 4, peak: 10, allOut: true }, 'advanced', 15],
  ] as const)('%o, %s: %d s', (bout, level, seconds) => {
    expect(recoveryNeed(bout, level, RULES)).toBeCloseTo(seconds, 9)
  })
})

describe('bouts', () => {
  it('run on over blocks and lead-ins, and rest until the effort rises again', () => {
    const [bout] = boutsOf([
      [30, 5],
      [20, 8],
      [10, 9],
      [15, 4],
      [12, 5],
      [30, 6],
    ])
    expect(bout).toMatchObject({ fromBlock: 1, toBlock: 2, peak: 9, workSeconds: 30, have: 27, need: 45, debt: 18 })
  })

  it('have no recovery where something harder than easy comes first', () => {
    expect(
      boutsOf([
        [20, 8],
        [30, 6],
        [60, 3],
      ])[0],
    ).toMatchObject({ have: 0, debt: 20 })
  })

  it('split ramps where they cross', () => {
    // From 6 to 10 over 40 s: the last half is hard. From 10 down to 0 over 50 s: 10 s hard, easy from 25 s on.
    const [bout] = boutsOf([
      [40, 6, 10],
      [50, 10, 0],
      [30, 6],
    ])
    expect(bout).toMatchObject({ workSeconds: 30, have: 25 })
    expect(bout!.from).toBe(22)
  })

  it('are judged one by one: a debt is not carried on', () => {
    const report = findBouts(
      linesOf([
        [30, 8],
        [10, 3],
        [30, 8],
        [10, 3],
        [30, 8],
        [300, 3],
      ]),
      'advanced',
      RULES,
    )
    expect(report.bouts.map(({ debt }) => debt)).toEqual([20, 20, 0])
    expect(report.totalDebt).toBe(40)
  })

  it('are what a walk through the ride in tenths of a second finds', () => {
    // Tens of seconds and whole efforts: no bout is shorter than a second.
    const effort = fc.integer({ min: 0, max: 10 })
    const step = fc.tuple(fc.integer({ min: 1, max: 6 }), effort, effort).map(([tens, start, end]): Step => [tens * 10, start, end])
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const found = boutsOf(steps)
        const walked = walk(linesOf(steps))
        expect(found.length).toBe(walked.length)
        for (const [i, { workSeconds, have, peak }] of found.entries()) {
          expect(workSeconds).toBeCloseTo(walked[i]!.work, 0)
          expect(Math.abs(have - walked[i]!.have)).toBeLessThan(0.5)
          expect(Math.abs(peak - walked[i]!.peak)).toBeLessThan(0.6)
        }
      }),
    )
  })
})

const TICK = 0.05

/** The same rules, told apart tick by tick instead of by crossings. */
function walk(lines: readonly EffortLine[]): { work: number; have: number; peak: number }[] {
  const ticks = lines.flatMap(({ from, to, start, end }) =>
    Array.from({ length: Math.round((to - from) / TICK) }, (_, i) => ({
      effort: start + ((end - start) * (i + 0.5) * TICK) / (to - from),
      falls: end < start,
    })),
  )
  const bouts: { work: number; have: number; peak: number }[] = []
  for (let i = 0; i < ticks.length; ) {
    if (ticks[i]!.effort < 8) {
      i++
      continue
    }
    const bout = { work: 0, have: 0, peak: 0 }
    for (; i < ticks.length && ticks[i]!.effort >= 8; i++) {
      bout.work += TICK
      bout.peak = Math.max(bout.peak, ticks[i]!.effort)
    }
    let j = i
    while (j < ticks.length && ticks[j]!.effort > 5 && ticks[j]!.falls && ticks[j]!.effort <= ticks[j - 1]!.effort) j++
    for (; j < ticks.length && ticks[j]!.effort <= 5; j++) bout.have += TICK
    bouts.push(bout)
  }
  return bouts
}

describe('sets and the ride', () => {
  it('count work and easy seconds over all rounds', () => {
    const set = aSet(
      'set',
      [aBlock('push', { ...inSeconds(20), effort: { from: 9, to: 9 } }), aBlock('ease', { ...inSeconds(10), effort: { from: 3, to: 3 } })],
      { rounds: 8 },
    )
    const before = aBlock('before', { ...inSeconds(60), effort: { from: 4, to: 4 } })
    const report = computeRide({ ...smallRide(), sections: [aSection('s', { blocks: [before, set] })] })
    expect(report.sets).toEqual([{ setId: 'set', from: 60, to: 300, workSeconds: 160, easySeconds: 80, ratio: 2 }])
    expect(report.overall).toMatchObject({ workSeconds: 160, easySeconds: 140, workShare: 160 / 300 })
  })

  it('have no ratio without easy time', () => {
    const block = aBlock('a', { ...inSeconds(60), effort: { from: 7, to: 7 } })
    expect(computeRide({ ...smallRide(), sections: [aSection('s', { blocks: [block] })] }).overall.ratio).toBeNull()
  })
})
