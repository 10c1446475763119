import fc from 'fast-check'
import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { makeVariant } from '#engine/fit/makeVariant.ts'
import type { RiderReport } from '#engine/report.ts'
import { roughIn } from '#engine/roughIn/roughIn.ts'
import type { Level, Ride } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { aSection, aSong } from '#tests/support/smallRide.ts'
import { cameraClass, studioClass } from '#tests/support/soundClasses.ts'
import { sayReport } from './sayReport.ts'

// All that is computed of a few classes, kept as text: a change of the engine shows there what else it has changed. Whether it
// is right is the other tests' business; `npx vitest run tests/engine/asItWas -u` keeps the new text once it was read.

/** What is the plan's own, lines of as many points as a screen has, and what a repair would do. */
const LEFT = new Set(['block', 'set', 'cue', 'curves', 'proposed', 'follower', 'excess', 'scale', 'byRecovery', 'band'])

it.each([
  ['spark', () => demoRide('spark')],
  ['camera', cameraClass],
  ['studio', studioClass],
] as const)('what is computed of %s', async (name, ride) => {
  const { findings, ...report } = computeRide(ride())
  const noticed = findings.map((finding) => ({ ...finding, fixes: finding.fixes.map(({ label }) => label) }))
  await expect(sayReport({ ...report, riders: withRanges(report.riders), noticed }, LEFT)).toMatchFileSnapshot(`${name}.txt`)
})

/** Of bands and recoveries the figures alone: their curves are as long as the rest together. */
function withRanges(riders: readonly RiderReport[]) {
  return riders.map(({ band, ...rider }) => ({
    ...rider,
    ranges: {
      energy: band.energy,
      heart: band.heart,
      lowestReserve: band.lowestReserve,
      recoveries: rider.reserve.byRecovery.map(({ minimum }) => minimum.share),
    },
  }))
}

/** Rides with everything a ride may hold, the same every time: what is kept may not hang on the seed of a run. */
const STRANGE = fc.sample(arbitraryRide({ sections: 3, items: 4 }), { seed: 23, numRuns: 60 })

it.each([0, 1, 2, 3, 4, 5])('what is computed of a ride with everything in it, %d', async (n) => {
  const { findings: _, ...report } = computeRide(STRANGE[n]!)
  await expect(sayReport({ ...report, riders: withRanges(report.riders) }, LEFT)).toMatchFileSnapshot(`strange-${n}.txt`)
})

it('the figures of whole rides', async () => {
  const rides = [...STRANGE, ...Array.from({ length: 12 }, (_, i) => plausibleRide(i + 1))]
  const figures = rides.map((ride) => {
    const { overall, measures, balance, shape, difficulty, recovery } = computeRide(ride)
    return sayReport({ overall, measures, balance, shape, difficulty, recovery: { ...recovery, bouts: recovery.bouts.length } }, LEFT)
  })
  await expect(figures.join('\n')).toMatchFileSnapshot('figures.txt')
})

/** Of a draft and a variant: what it was given, and what says nothing of the choices it made. */
const GIVEN = new Set(['id', 'grid', 'bike', 'leaders', 'riders', 'lengthSeconds', 'posture', 'hands'])
const songs = (level: Level): Ride => ({
  ...blankRide({ newId: () => 'songs', title: 'songs', slotMinutes: 30, level }),
  sections: [128, 92, 140, 64, 174, 118, 150, 104].map((bpm, i) =>
    aSection(`s${i}`, { song: aSong(`song${i}`, { grid: gridOfTempo(bpm), lengthSeconds: 190 + 7 * i }), leadInSeconds: i === 0 ? 0 : 2 }),
  ),
})

it.each([
  ['beginner', 1],
  ['mixed', 2],
  ['mixed', 3],
  ['advanced', 4],
] as const)('the draft for a %s class of number %d', async (level, seed) => {
  const { ride, ...told } = roughIn(songs(level), { seed })!
  await expect(sayReport({ ...told, sections: ride.sections }, GIVEN)).toMatchFileSnapshot(`draft-${level}-${seed}.txt`)
})

it.each([20, 30, 40] as const)('the ridge in %d minutes', async (minutes) => {
  const made = makeVariant(demoRide('ridge'), minutes, 'variant')
  await expect(sayReport(made, GIVEN)).toMatchFileSnapshot(`ridge-in-${minutes}.txt`)
})
