import fc from 'fast-check'
import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import { openingCard } from '#engine/words/openingCard.ts'
import { sayMeasures } from '#features/drafting/panel/ride/sayMeasures.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { told } from '#tests/support/told.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'

/** The words for a hard effort, the warm-up and the longest effort wherever they are said, against the plan itself. */
function agree(ride: Ride): void {
  const report = computeRide(ride)
  const { measures, recovery, difficulty, shape, overall, findings, blocks } = report
  const rules = constantsOf(ride)
  const rows = new Map(sayMeasures(measures, overall, rules).map(({ name, says }) => [name, says]))
  const ridden = blocks.filter(({ from, to }) => to > from)
  const top = Math.max(0, ...ridden.map(({ block }) => Math.max(block.effort.from, block.effort.to)))
  const longest = Math.max(0, ...recovery.bouts.map(({ workSeconds }) => workSeconds))
  const { sentences } = openingCard(ride, report)

  // A hard effort is one of at least the same level everywhere, and there is one or there is none.
  for (const { peak } of recovery.bouts) expect(peak).toBeGreaterThanOrEqual(rules.hardEffort)
  const none = recovery.bouts.length === 0
  if (top < rules.hardEffort) expect(none).toBe(true)
  expect(measures.firstHard === null).toBe(none)
  expect(rows.has('first hard effort')).toBe(!none)
  expect(shape.lastPeak === null).toBe(none || overall.total <= 0)
  expect(sentences[0].includes('nothing hard')).toBe(none)

  // The longest is the longest bout.
  expect(difficulty.figures.longestHard).toBe(longest)
  if (!none) expect(rows.get('first hard effort')).toContain(formatDuration(longest))

  // The warm-up is the time before the first block, or part of a ramp, at its level.
  const { warmUp } = measures
  expect(rows.has('warm-up')).toBe(warmUp !== null)
  const short = findings.find(({ rule }) => rule === 'warmUp')
  if (short) expect(told(short.text)).toContain(warmUp! < 0.5 ? 'no warm-up' : formatDuration(warmUp!))
  if (warmUp !== null) {
    expect(rows.get('warm-up')).toContain(formatClock(warmUp))
    const before = ridden.filter(({ to }) => to <= ride.briefingSeconds + warmUp)
    for (const { block } of before) expect(Math.max(block.effort.from, block.effort.to)).toBeLessThanOrEqual(rules.warmUpEffort)
  } else expect(top).toBeLessThanOrEqual(rules.warmUpEffort)
  if (shape.lastPeak !== null) expect(shape.lastPeak * overall.total).toBeCloseTo(measures.lastHardest!, 6)
}

it('what is hard, the warm-up and the longest effort are the same in the opening card, the panel, the arc and the findings', () => {
  fc.assert(
    fc.property(arbitraryRide(), (ride) => agree(ride)),
    { numRuns: 100 },
  )
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => agree(plausibleRide(seed))),
    { numRuns: 20 },
  )
})
