import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { insertItem } from '#plan/commands/insertItem.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import type { Bike, Ride } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { blockFromPattern, PATTERNS } from '#plan/patterns/patterns.ts'
import { stepsOnBike } from '#plan/patterns/stepsOnBike.ts'
import { aSection, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'

const ride = smallRide()
const [counted, timed] = ride.sections as [Ride['sections'][0], Ride['sections'][0]]

/** Another scale: levels 1–24 with a magnet, base at level 5. */
const LEVELS: Bike = {
  id: 'levels',
  name: 'levels',
  unit: 'level',
  stepsPerUnit: 1,
  min: 1,
  max: 24,
  base: 5,
  brake: 'magnetic',
  referenceRpm: 80,
  points: [
    [1, 6],
    [5, 48],
    [8, 95],
    [11, 150],
    [14, 212],
    [18, 300],
    [24, 450],
  ],
}

describe('patterns', () => {
  it('are one of each kind the trade asks for first', () => {
    expect(PATTERNS.map(({ id }) => id)).toEqual([
      ...'flat standing-flat seated-hill standing-hill hover hold jumps-16 jumps-8 jumps-4 push run'.split(' '),
      ...'leans presses corners travel-backs tempo surge standing-surge recover flush stretch'.split(' '),
    ])
  })

  it.each(PATTERNS.map((pattern) => [pattern.id, pattern] as const))('%s fits a song, the clock and any bike', (_, pattern) => {
    for (const section of [counted, timed]) {
      for (const onRide of [ride, setDatum('loose').apply(ride), { ...ride, bike: LEVELS }]) {
        const item = blockFromPattern(pattern, onRide, section, countedIds())
        const after = insertItem(onRide, { sectionId: section.id, index: 0, item }).apply(onRide)
        expect(after.sections.find(({ id }) => id === section.id)!.blocks[0]).toEqual(item)
        expect(parseRide(after)).toEqual({ ok: true, ride: after })
        const played = computeRide(after).blocks.find(({ block }) => block.id === item.id)!
        expect(played.cadence.kind).not.toBe('unknown')
      }
    }
  })

  it('are whole phrases under a song, sixes in three, and say no number that would go stale', () => {
    const waltz = aSection('w', { song: aSong('w', { grid: { anchors: [[0, 0], [150, 60]], beatsPerBar: 3 } }) }) // biome-ignore format: one row
    for (const pattern of PATTERNS) {
      const { length } = blockFromPattern(pattern, ride, counted, countedIds())
      expect('counts' in length && length.counts % 32).toBe(0)
      expect(blockFromPattern(pattern, ride, waltz, countedIds()).length).toEqual({ counts: pattern.eights * 6 })
      const { feel, cues } = blockFromPattern(pattern, ride, counted, countedIds())
      expect(`${cues[0]!.text} ${feel}`).not.toMatch(/\d|\b(one|two|three|four|half|quarter|ten|twenty|thirty)\b/i)
    }
  })

  it('keep to the habits the findings judge by: easy is light, standing is heavy enough, cadences are in their windows', () => {
    for (const { id, effort, total, posture, cadence } of PATTERNS) {
      if (effort.to <= 3) expect(total.to, id).toBeLessThanOrEqual(3)
      if (posture === 'standing') expect(total.from, id).toBeGreaterThanOrEqual(4)
      if (cadence === 'legsStill') continue
      expect(cadence.rpm, id).toBeGreaterThanOrEqual(60)
      expect(cadence.rpm, id).toBeLessThanOrEqual(posture === 'standing' ? 85 : 110)
    }
  })

  it('state a cadence only where no beat gives one', () => {
    const flat = PATTERNS[0]!
    expect(blockFromPattern(flat, ride, counted, countedIds())).not.toHaveProperty('cadence')
    expect(blockFromPattern(flat, ride, timed, countedIds()).cadence).toEqual({ rpm: 85 })
    const offBeat = aSection('o', { song: aSong('o', { strikesPerBeat: null }) })
    expect(blockFromPattern(flat, ride, offBeat, countedIds()).cadence).toEqual({ rpm: 85 })
    expect(blockFromPattern(PATTERNS.at(-1)!, ride, counted, countedIds()).cadence).toBe('legsStill')
  })
})

describe('stepsOnBike', () => {
  it('is the same total on the same scale, counted from the datum', () => {
    expect(stepsOnBike(7, DEFAULT_BIKE, { bike: structuredClone(DEFAULT_BIKE), datum: 'base' })).toBe(7)
    expect(stepsOnBike(7, DEFAULT_BIKE, { bike: DEFAULT_BIKE, datum: 'loose' })).toBe(15)
  })

  it('weighs the same on another scale', () => {
    // Two turns over base are 170 W; levels 11 and 14 are 150 and 212 W, so 11.97, seven over base 5.
    expect(stepsOnBike(8, DEFAULT_BIKE, { bike: LEVELS, datum: 'base' })).toBe(7)
    expect(stepsOnBike(8, DEFAULT_BIKE, { bike: LEVELS, datum: 'loose' })).toBe(12)
  })

  it('stays on the bike', () => {
    expect(stepsOnBike(400, DEFAULT_BIKE, { bike: LEVELS, datum: 'loose' })).toBe(24)
    expect(stepsOnBike(-400, DEFAULT_BIKE, { bike: LEVELS, datum: 'loose' })).toBe(1)
  })
})

describe('blankRide', () => {
  it('opens, computes, and has a place for the first block', () => {
    const blank = blankRide({ newId: countedIds(), title: 'Tuesday', slotMinutes: 30, level: 'beginner' })
    expect(parseRide(blank)).toEqual({ ok: true, ride: blank })
    expect(blank).toMatchObject({ title: 'Tuesday', slotMinutes: 30, level: 'beginner', datum: 'base', bike: DEFAULT_BIKE })
    expect(blank.sections).toHaveLength(1)
    expect(blank).not.toHaveProperty('language')
    expect(blankRide({ newId: countedIds(), title: 'Dienstag', language: 'de' })).toMatchObject({ language: 'de' })
    expect(blankRide({ newId: countedIds(), title: 'Tuesday', language: 'en' })).not.toHaveProperty('language')
    expect(computeRide(blank).overall).toMatchObject({ total: 0, slot: 1800, slack: 1800 })
  })
})
