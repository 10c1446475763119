import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { makeVariant } from '#engine/fit/makeVariant.ts'
import { roughIn } from '#engine/roughIn/roughIn.ts'
import { gridOfTempo } from '#plan/beatGrid.ts'
import type { Level, Ride } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aSection, aSong } from '#tests/support/smallRide.ts'
import { cameraClass, studioClass } from '#tests/support/soundClasses.ts'
import { sayReport } from './sayReport.ts'

// All that is computed of a few classes, kept as text: a change of the engine shows there what else it has changed. Whether it
// is right is the other tests' business; `npx vitest run tests/engine/asItWas -u` keeps the new text once it was read.

/** What is the plan's own, lines of as many points as a screen has, and what a repair would do. */
const LEFT = new Set(['block', 'set', 'cue', 'curves', 'proposed', 'follower', 'excess', 'scale'])

it.each([
  ['spark', () => demoRide('spark')],
  ['camera', cameraClass],
  ['studio', studioClass],
] as const)('what is computed of %s', async (name, ride) => {
  const { findings, ...report } = computeRide(ride())
  const noticed = findings.map((finding) => ({ ...finding, fixes: finding.fixes.map(({ label }) => label) }))
  await expect(sayReport({ ...report, noticed }, LEFT)).toMatchFileSnapshot(`${name}.txt`)
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
