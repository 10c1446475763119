import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { readAim } from '#engine/roughIn/aims.ts'
import { canRoughIn, roughIn } from '#engine/roughIn/roughIn.ts'
import { gridOfTempo } from '#plan/beatGrid.ts'
import { type Block, isSet, type Level, type Ride } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { parseRide } from '#plan/parseRide.ts'
import { arbitrarySongList } from '#tests/support/arbitrarySongList.ts'
import { frozen } from '#tests/support/frozen.ts'
import { aBlock, aSection, aSong } from '#tests/support/smallRide.ts'

const TEMPOS = [128, 170, 132, 150, 140, 176, 90, 126, 160, 145, 172, 135]

/** Twelve songs of three and a half minutes in three quarters of an hour. */
const twelveSongs = (level: Level = 'mixed', change: Partial<Ride> = {}): Ride => ({
  ...blankRide({ newId: () => 'twelve', title: 'twelve songs', slotMinutes: 45, level }),
  sections: TEMPOS.map((bpm, i) =>
    aSection(`s${i}`, { song: aSong(`song${i}`, { grid: gridOfTempo(bpm), lengthSeconds: 215 }), leadInSeconds: i === 0 ? 0 : 2 }),
  ),
  ...change,
})

const blocksOf = (ride: Ride): Block[] =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))

describe('a rough draft of any songs', () => {
  it('is a ride that opens again, whole on its music, with no problem and hardly a warning', () => {
    fc.assert(
      fc.property(arbitrarySongList, fc.integer(), (ride, seed) => {
        const { ride: drafted } = roughIn(ride, { seed })!
        const report = computeRide(drafted)
        expect(parseRide(JSON.parse(JSON.stringify(drafted))).ok).toBe(true)
        expect(report.findings.filter(({ severity }) => severity === 'problem')).toEqual([])
        expect(report.findings.filter(({ severity }) => severity === 'warning').length).toBeLessThanOrEqual(3)
        for (const { open, beyond, counts, aligned } of report.sections) {
          expect(beyond).toBe(0)
          expect(counts ? open : open < 1).toBe(counts ? 0 : true)
          if (counts) expect(aligned ?? 1).toBe(1)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('depends on the ride and the seed alone, and leaves the ride it is given as it is', () => {
    fc.assert(
      fc.property(arbitrarySongList, fc.integer(), (ride, seed) => {
        expect(roughIn(frozen(structuredClone(ride)), { seed })!.ride).toEqual(roughIn(ride, { seed })!.ride)
      }),
      { numRuns: 15 },
    )
  })

  it('keeps songs, their order and everything else of the ride', () => {
    fc.assert(
      fc.property(arbitrarySongList, (ride) => {
        const { ride: drafted } = roughIn(ride, { seed: 3 })!
        const stripped = (one: Ride) => ({
          ...one,
          sections: one.sections.map(({ blocks: _, lead: __, outCount: ___, song, ...rest }) => ({
            ...rest,
            song: { ...song!, strikesPerBeat: 0 },
          })),
        })
        expect(stripped(drafted)).toEqual(stripped(ride))
      }),
      { numRuns: 15 },
    )
  })
})

describe('the arc of a draft', () => {
  it.each(['beginner', 'mixed', 'advanced'] as const)('warms up, keeps to its level, finishes late and cools down: %s', (level) => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const { ride } = roughIn(twelveSongs(level), { seed })!
      const { findings, totals, shape } = computeRide(ride)
      const rules = findings.map(({ rule }) => rule)
      for (const rule of ['warmUp', 'coolDown', 'workShare', 'endsHeavy', 'difficultyForLevel']) expect(rules).not.toContain(rule)
      expect(totals.workShare).toBeGreaterThan(level === 'beginner' ? 0.01 : 0.12)
      if (level === 'beginner') continue
      expect(shape.lastPeak).toBeGreaterThan(0.78)
      expect(shape.lastPeak).toBeLessThan(0.9)
    }
  })

  it('comes down for a song about half-way, and tells riders to drink', () => {
    const { ride, arc } = roughIn(twelveSongs(), { seed: 1 })!
    expect(arc.some((sentence) => /^A recovery song at (4|5)\d %/.test(sentence))).toBe(true)
    expect(computeRide(ride).findings.map(({ rule }) => rule)).not.toContain('water')
  })

  it('gives a song terrain that its tempo suits, and the lead foot from song to song to the other side', () => {
    const { ride } = roughIn(twelveSongs(), { seed: 1 })!
    const rules = computeRide(ride).findings.map(({ rule }) => rule)
    expect(rules).not.toContain('cadenceBounds')
    const leads = ride.sections.flatMap(({ lead }) => lead ?? [])
    expect(leads.every((foot, i) => i === 0 || foot !== leads[i - 1])).toBe(true)
  })

  it('rides a tempo between the windows off the beat, and says so', () => {
    const between = aSection('s', { song: aSong('odd', { grid: gridOfTempo(115) }) })
    const draft = roughIn(twelveSongs('mixed', { sections: [...twelveSongs().sections.slice(0, 3), between] }), { seed: 1 })!
    expect(draft.ride.sections[3]!.song!.strikesPerBeat).toBeNull()
    expect(draft.songs[3]!.text).toContain('off the beat')
  })
})

describe('what is asked of a draft', () => {
  it('is another one for another seed', () => {
    const drafts = [1, 2, 3, 4, 5, 6].map((seed) => JSON.stringify(roughIn(twelveSongs(), { seed })!.ride))
    expect(new Set(drafts).size).toBe(6)
  })

  it('follows its aim', () => {
    const hills = (aim: 'climbs' | 'intervals') =>
      blocksOf(roughIn(twelveSongs(), { seed: 1, aim })!.ride).filter(({ terrain }) => terrain === 'hill').length
    expect(hills('climbs')).toBeGreaterThan(hills('intervals'))
  })

  it('reads the aim in the ride’s own words, the first one named', () => {
    expect(readAim('long climbs with a sprint at the end')).toBe('endurance')
    expect(readAim('Hills, then pushes')).toBe('climbs')
    expect(readAim('party on the beat')).toBe('rhythm')
    expect(readAim(undefined)).toBe('mixed')
  })

  it('leaves a song alone that has blocks, and asks for one that has none', () => {
    const own = aSection('own', { song: aSong('mine'), blocks: [aBlock('b', { length: { counts: 480 } })] })
    const ride = twelveSongs('mixed', { sections: [own, ...twelveSongs().sections.slice(1, 6)] })
    const { ride: drafted, songs } = roughIn(ride, { seed: 1 })!
    expect(drafted.sections[0]).toBe(own)
    expect(songs).toHaveLength(5)
    expect(canRoughIn(drafted)).toBe(false)
    expect(roughIn(drafted, { seed: 1 })).toBeNull()
  })

  it('uses no move the room avoids', () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const { ride } = roughIn(twelveSongs('mixed', { avoidMoves: ['jumps', 'side leans'] }), { seed, aim: 'rhythm' })!
      expect(blocksOf(ride).filter(({ move, terrain }) => move || terrain === 'jumps')).toEqual([])
    }
  })

  it('puts choruses where the song’s marks have them', () => {
    const marks = [0, 64, 128, 192, 256].map((count, i) => ({ count, label: i % 2 === 0 ? 'verse' : 'chorus' }))
    const ride = twelveSongs()
    ride.sections[3] = { ...ride.sections[3]!, song: { ...ride.sections[3]!.song!, marks } }
    const { ride: drafted } = roughIn(ride, { seed: 2, aim: 'climbs' })!
    const starts = computeRide(drafted)
      .blocks.filter(({ section }) => section === 3)
      .map(({ countFrom }) => countFrom)
    for (const { count } of marks.slice(0, 4)) expect(starts).toContain(count)
  })

  it('ends songs earlier, at phrases, where they are longer than the slot', () => {
    const ride = twelveSongs('mixed', { slotMinutes: 40 })
    const { ride: drafted } = roughIn(ride, { seed: 1 })!
    expect(computeRide(drafted).totals.slack).toBeGreaterThanOrEqual(0)
    expect(drafted.sections.some(({ outCount }) => outCount !== undefined && outCount % 32 === 0)).toBe(true)
    const tooMany = roughIn(twelveSongs('mixed', { slotMinutes: 20 }), { seed: 1 })!
    expect(tooMany.arc.at(-1)).toContain('longer than the slot')
  })

  it('is one change, made to the ride it was proposed for only', () => {
    const ride = twelveSongs()
    const { command, ride: drafted } = roughIn(ride, { seed: 7 })!
    expect(command.apply(ride)).toBe(drafted)
    expect(command.label).toBe('Roughed in 12 songs (draft 7)')
    const other = twelveSongs()
    expect(command.apply(other)).toBe(other)
  })
})
