import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import { arcOf } from '#engine/roughIn/arc.ts'
import { joined } from '#engine/roughIn/chunks.ts'
import { heardForm } from '#engine/roughIn/heardForm.ts'
import { keepToShare } from '#engine/roughIn/keepToShare.ts'
import { pick, seededRandom } from '#engine/roughIn/seededRandom.ts'
import { segmentsOf } from '#engine/roughIn/segments.ts'
import { settle } from '#engine/roughIn/settle.ts'
import { stretchesOf } from '#engine/roughIn/stretches.ts'
import { strikesFor } from '#engine/roughIn/styles.ts'
import type { Ride, Song } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSong } from '#tests/support/smallRide.ts'

const rules = constantsOf({})

describe('the share of work', () => {
  const song = (intensity: number) => ({
    intensity,
    eightSeconds: 4,
    planned: [
      { pattern: 'tempo', eights: 10, effort: 5 },
      { rounds: 2, parts: [{ pattern: 'push', eights: 5, effort: 9 }] },
    ],
  })

  it('is kept by the easiest songs giving theirs up, pushes ridden steadily then', () => {
    // Forty seconds of work a song, of four hundred in all: a mixed class takes three such songs at most.
    const kept = keepToShare([song(0.9), song(0.2), song(0.5), song(0.7)], 400, 0, 'mixed', rules)
    expect(kept.map(({ planned }) => planned[1])).toEqual([
      song(1).planned[1],
      { rounds: 2, parts: [{ pattern: 'flat', eights: 5, effort: 6.5 }] },
      { rounds: 2, parts: [{ pattern: 'flat', eights: 5, effort: 6.5 }] },
      song(1).planned[1],
    ])
  })

  it('counts work that is there already', () => {
    expect(keepToShare([song(1)], 400, 110, 'mixed', rules)[0]!.planned[1]).not.toEqual(song(1).planned[1])
    expect(keepToShare([song(1)], 400, 0, 'mixed', rules)[0]).toEqual(song(1))
  })
})

describe('the form of a song', () => {
  const form = { down: [30], up: [30] }
  const ride = (marks?: { count: number; label: string }[]): Ride => ({
    ...blankRide({ newId: () => 'r', title: 'r' }),
    sections: [aSection('s', { song: aSong('x', { grid: gridOfTempo(128), ...(marks && { marks }) }) })],
  })
  const formOf = (one: Ride) => segmentsOf(stretchesOf(one)[0]!, 60, form, seededRandom(1)).segments

  it('is whole phrases that end with a quieter one, all the eights together', () => {
    const segments = formOf(ride())
    expect(segments.reduce((sum, { eights }) => sum + eights, 0)).toBe(60)
    expect(segments.at(-1)!.up).toBe(false)
    expect(segments.slice(0, -1).every(({ eights }) => eights % 4 === 0)).toBe(true)
  })

  it('is its own section marks where it has them', () => {
    const marks = [
      { count: 0, label: 'intro' },
      { count: 128, label: 'Chorus' },
      { count: 256, label: 'verse 2' },
    ]
    expect(formOf(ride(marks))).toEqual([
      { eights: 16, up: false },
      { eights: 16, up: true },
      { eights: 28, up: false },
    ])
  })
})

describe('the form of a song by its loudness', () => {
  const form = { down: [30], up: [30] }
  // At 120 beats a minute an eight lasts four seconds and a phrase sixteen; the song’s first beat is at 8 s.
  const stretch = (change: Partial<Song> = {}) =>
    stretchesOf({
      ...blankRide({ newId: () => 'r', title: 'r' }),
      sections: [aSection('s', { song: aSong('x', { grid: gridOfTempo(120, 8), ...change }) })],
    })[0]!
  const levels = (...phrases: number[]) => [...Array(8).fill(-30), ...phrases.flatMap((level) => Array(16).fill(level))] as number[]

  it('is its loud and quiet phrases, counted from the first beat, and it ends with a quieter one', () => {
    const { segments, known } = segmentsOf(stretch(), 32, form, seededRandom(1), levels(-20, -20, -12, -12, -20, -12, -20, -20))
    expect(known).toBe('sound')
    expect(segments).toEqual([
      { eights: 8, up: false },
      { eights: 8, up: true },
      { eights: 4, up: false },
      { eights: 4, up: true },
      { eights: 8, up: false },
    ])
  })

  it('is guessed as ever where it is as loud throughout, and its own marks go first', () => {
    const flat = segmentsOf(stretch(), 32, form, seededRandom(1), levels(-14, -13, -14, -13, -14, -13, -14, -13))
    expect(flat).toEqual(segmentsOf(stretch(), 32, form, seededRandom(1)))
    const marks = [
      { count: 0, label: 'verse' },
      { count: 64, label: 'chorus' },
      { count: 128, label: 'verse' },
    ]
    const marked = segmentsOf(stretch({ marks }), 32, form, seededRandom(1), levels(-20, -12, -12, -20, -20, -12, -20, -20))
    expect(marked).toEqual(segmentsOf(stretch({ marks }), 32, form, seededRandom(1)))
    expect(marked.known).toBe('marks')
  })

  it('has the builds that are heard before its loud marks', () => {
    const marks = [
      { count: 0, label: 'verse' },
      { count: 128, label: 'chorus' },
      { count: 192, label: 'verse' },
    ]
    // The third and fourth phrase rise by a second's 0.2 LU; the first two do not.
    const rising = Array.from({ length: 32 }, (_, second) => -20 + 0.2 * second)
    const sound = [...levels(-20, -20), ...rising, ...levels(-8, -8, -20, -20).slice(8)]
    expect(segmentsOf(stretch({ marks }), 32, form, seededRandom(1), sound).segments).toEqual([
      { eights: 16, up: false, build: 8 },
      { eights: 8, up: true },
      { eights: 8, up: false },
    ])
    expect(segmentsOf(stretch({ marks }), 32, form, seededRandom(1)).segments[0]).toEqual({ eights: 16, up: false })
  })

  it('leaves two fifths for coming down even in a song that is loud nearly throughout', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -40, max: -6, noNaN: true }), { minLength: 5, maxLength: 14 }), (phrases) => {
        const eights = phrases.length * 4
        const segments = heardForm(stretch({ lengthSeconds: 400 }), eights, levels(...phrases))
        if (!segments) return
        const up = segments.reduce((sum, segment) => sum + (segment.up ? segment.eights : 0), 0)
        expect(segments.reduce((sum, segment) => sum + segment.eights, 0)).toBe(eights)
        expect(up).toBeGreaterThan(0)
        expect(up / eights).toBeLessThanOrEqual(0.61)
      }),
    )
  })
})

describe('an arc for songs whose drive is known', () => {
  const ride: Ride = {
    ...blankRide({ newId: () => 'r', title: 'r', slotMinutes: 45 }),
    sections: Array.from({ length: 12 }, (_, i) => aSection(`s${i}`, { song: aSong(`x${i}`, { lengthSeconds: 215 }) })),
  }
  const arc = (energies: (Energy | undefined)[]) => arcOf(stretchesOf(ride), ride, rules, energies)
  const plain = arc([])

  it('is the usual one where nothing is known, or all have as much', () => {
    expect(arc(ride.sections.map(() => 4 as const))).toEqual(plain)
  })

  it('raises the most driving song of a wave above the others of it', () => {
    const wave = plain.places.flatMap(({ role }, index) => (role === 'work' ? [index] : []))
    const [first, second] = [wave[0]!, wave[1]!]
    expect(plain.places[second]!.intensity).toBeGreaterThan(plain.places[first]!.intensity)
    const driven = arc(ride.sections.map((_, index) => (index === first ? 5 : 3)))
    expect(driven.places[first]!.intensity).toBeGreaterThan(driven.places[second]!.intensity)
    expect(driven.places.filter(({ role }) => role === 'finish')).toEqual([{ role: 'finish', intensity: 1 }])
  })
})

describe('the engine’s own repairs', () => {
  const ride: Ride = {
    ...blankRide({ newId: () => 'r', title: 'r' }),
    sections: [
      aSection('mine', { blocks: [aBlock('a', { length: { seconds: 60 }, posture: 'standing', hands: 'wide', cadence: { rpm: 70 } })] }),
      aSection('drafted', { blocks: [aBlock('b', { length: { seconds: 60 }, posture: 'standing', hands: 'wide', cadence: { rpm: 70 } })] }),
    ],
  }
  const light = (one: Ride, id: string) => computeRide(one).findings.some(({ rule, blockId }) => rule === 'lightStanding' && blockId === id)

  it('mend what was drafted and leave alone what was not', () => {
    const settled = settle(ride, new Set(['drafted']))
    expect([light(ride, 'a'), light(ride, 'b')]).toEqual([true, true])
    expect([light(settled, 'a'), light(settled, 'b')]).toEqual([true, false])
    expect(settled.sections[0]).toBe(ride.sections[0])
  })
})

describe('small parts', () => {
  it('a seed gives one row of numbers in the unit interval, spread evenly', () => {
    const rows = [1, 1, 2].map((seed) => Array.from({ length: 4000 }, seededRandom(seed)))
    expect(rows[0]).toEqual(rows[1])
    expect(rows[0]).not.toEqual(rows[2])
    expect(Math.min(...rows[0]!)).toBeGreaterThanOrEqual(0)
    expect(Math.max(...rows[0]!)).toBeLessThan(1)
    expect(rows[0]!.reduce((sum, value) => sum + value, 0) / 4000).toBeCloseTo(0.5, 1)
    const random = seededRandom(3)
    expect(new Set(Array.from({ length: 50 }, () => pick(random, ['a', 'b'])))).toEqual(new Set(['a', 'b']))
  })

  it('neighbours that ask for the same are one block', () => {
    const chunk = { pattern: 'flat', eights: 8, effort: 4 }
    expect(joined([chunk, chunk, { ...chunk, effort: 5 }, { ...chunk, effort: 5, swap: true }])).toEqual([
      { ...chunk, eights: 16 },
      { ...chunk, effort: 5 },
      { ...chunk, effort: 5, swap: true },
    ])
  })

  it('a song keeps its own strikes where they suit, and takes others only where they do not', () => {
    const at = (bpm: number, strikesPerBeat: 1 | 2) => aSong('x', { grid: gridOfTempo(bpm), strikesPerBeat })
    expect(strikesFor(at(140, 1), 'lowHill', rules)).toBe(1)
    expect(strikesFor(at(70, 1), 'lowHill', rules)).toBe(2)
    expect(strikesFor(at(115, 1), 'lowHill', rules)).toBeUndefined()
  })
})
