import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { makeVariant, VARIANT_MINUTES } from '#engine/fit/makeVariant.ts'
import { roughIn } from '#engine/roughIn/roughIn.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import type { Ride, Section } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { countedIds } from '#tests/support/smallRide.ts'
import { cameraClass, studioClass } from '#tests/support/soundClasses.ts'

/** A draft on songs of tempos from a list, each as long as the next of the lengths. */
function drafted(slotMinutes: number, level: Ride['level'], tempos: readonly number[], lengths: readonly number[]): Ride {
  const newId = countedIds()
  const sections: Section[] = []
  for (let seconds = 0, i = 0; seconds < slotMinutes * 60 - 40; i++) {
    const lengthSeconds = lengths[i % lengths.length]!
    const grid = gridOfTempo(tempos[i % tempos.length]!, 0, 4)
    const song = { id: newId(), title: `Song ${i + 1}`, lengthSeconds, grid, strikesPerBeat: 1 as const }
    sections.push({ id: newId(), leadInSeconds: i === 0 ? 0 : 2, song, blocks: [] })
    seconds += lengthSeconds + 2
  }
  const ride = { ...blankRide({ newId, title: `${slotMinutes} minutes`, slotMinutes, level, bike: DEFAULT_BIKE }), sections }
  return roughIn(ride, { seed: slotMinutes })!.ride
}

const parents = (): Ride[] => [
  demoRide('spark'),
  demoRide('ridge'),
  cameraClass(),
  studioClass(),
  drafted(30, 'beginner', [96, 88, 124, 132], [232, 182, 286, 173, 295]),
  drafted(45, 'mixed', [126, 133.5, 118, 140, 128], [241, 203, 228, 265, 187]),
  drafted(60, 'advanced', [174, 128, 66, 138, 151], [254, 214, 197, 289, 231]),
]

const rulesOf = (ride: Ride, severity: string): string[] =>
  computeRide(ride).findings.flatMap((finding) => (finding.severity === severity ? [finding.rule] : []))

/** Neither less than half as long nor more than twice and a bit. */
const isPlausible = (ride: Ride, minutes: number): boolean =>
  minutes !== ride.slotMinutes && minutes > 0.44 * ride.slotMinutes && minutes < 2.3 * ride.slotMinutes

describe('versions a class is plausibly asked for', () => {
  const asked = parents().flatMap((ride) =>
    VARIANT_MINUTES.filter((minutes) => isPlausible(ride, minutes)).map((minutes) => ({ ride, minutes })),
  )
  const made = asked.map(({ ride, minutes }) => ({ ride, minutes, variant: makeVariant(ride, minutes, 'v') }))

  it('are refused less than one time in twenty, and then with the reason', () => {
    const refused = made.filter(({ variant }) => !variant.ok)
    expect(asked.length).toBeGreaterThan(30)
    for (const { variant } of refused) expect(variant.ok ? '' : variant.reason).toMatch(/\d.*\.$/)
    expect(refused.length / asked.length).toBeLessThan(0.05)
  })

  it('end inside the slot, can be opened, and bring no problem and no short end their parent has not', { timeout: 60_000 }, () => {
    for (const { ride, minutes, variant } of made) {
      if (!variant.ok) continue
      const name = `${ride.title} in ${minutes}`
      expect(parseRide(structuredClone(variant.ride)).ok, name).toBe(true)
      const { slack } = computeRide(variant.ride).overall
      expect(slack, name).toBeGreaterThanOrEqual(-1e-6)
      expect(slack, name).toBeLessThanOrEqual(20 + 1e-6)
      const own = new Set(rulesOf(ride, 'problem'))
      expect(
        rulesOf(variant.ride, 'problem').filter((rule) => !own.has(rule)),
        name,
      ).toEqual([])
      const ends = new Set(rulesOf(ride, 'warning'))
      const short = rulesOf(variant.ride, 'warning').filter((rule) => (rule === 'warmUp' || rule === 'coolDown') && !ends.has(rule))
      expect(short, name).toEqual([])
    }
  })

  it('say of every section and song what has become of it', () => {
    for (const { ride, variant } of made) {
      if (!variant.ok) continue
      const counts = (of: Ride) => {
        const plays = new Map<string, number>()
        for (const { song } of of.sections) if (song) plays.set(song.id, (plays.get(song.id) ?? 0) + 1)
        return plays
      }
      const [was, is] = [counts(ride), counts(variant.ride)]
      for (const section of ride.sections) {
        const id = section.song!.id
        const told = variant.changes.filter(({ sectionId }) => sectionId === section.id).map(({ kind }) => kind)
        if ((is.get(id) ?? 0) === 0) expect(told).toContain('dropped')
        if ((is.get(id) ?? 0) > was.get(id)!) expect(told).toContain('repeated')
      }
    }
  })
})
