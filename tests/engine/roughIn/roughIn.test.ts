import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { type Aim, readAim } from '#engine/roughIn/aims.ts'
import { canRoughIn, roughIn } from '#engine/roughIn/roughIn.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { type Block, isSet, type Level, type Ride, type Song, type Terrain } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo, secondAt } from '#plan/songs/beatGrid.ts'
import { arbitrarySongList } from '#tests/support/arbitrarySongList.ts'
import { frozen } from '#tests/support/frozen.ts'
import { aBlock, aSection, aSong } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

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

/** It opens again, stands whole on its music, and has no problem and hardly a warning. */
function expectSound(drafted: Ride): void {
  const report = computeRide(drafted)
  expect(parseRide(JSON.parse(JSON.stringify(drafted))).ok).toBe(true)
  expect(report.findings.filter(({ severity }) => severity === 'problem')).toEqual([])
  expect(report.findings.filter(({ severity }) => severity === 'warning').length).toBeLessThanOrEqual(3)
  for (const { open, beyond, counts, aligned } of report.sections) {
    expect(beyond).toBe(0)
    expect(counts ? open : open < 1).toBe(counts ? 0 : true)
    if (counts) expect(aligned ?? 1).toBe(1)
  }
}

describe('a rough draft of any songs', () => {
  it('is a ride that opens again, whole on its music, with no problem and hardly a warning', () => {
    fc.assert(
      fc.property(arbitrarySongList, fc.integer(), (ride, seed) => {
        const { ride: drafted } = roughIn(ride, { seed })!
        expectSound(drafted)
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
      const { findings, overall, shape } = computeRide(ride)
      const rules = findings.map(({ rule }) => rule)
      for (const rule of ['warmUp', 'coolDown', 'workShare', 'endsHeavy', 'difficultyForLevel']) expect(rules).not.toContain(rule)
      expect(overall.workShare).toBeGreaterThan(level === 'beginner' ? 0.01 : 0.12)
      if (level === 'beginner') continue
      expect(shape.lastPeak).toBeGreaterThan(0.78)
      expect(shape.lastPeak).toBeLessThan(0.9)
    }
  })

  it('comes down for a song about half-way, and tells riders to drink', () => {
    const { ride, arc } = roughIn(twelveSongs(), { seed: 1 })!
    expect(arc.some((sentence) => /“song\d+” at (4|5)\d% is easy/.test(told(sentence)))).toBe(true)
    expect(computeRide(ride).findings.map(({ rule }) => rule)).not.toContain('water')
  })

  it('gives a song terrain that its tempo suits, and the lead foot from song to song to the other side', () => {
    const { ride } = roughIn(twelveSongs(), { seed: 1 })!
    const rules = computeRide(ride).findings.map(({ rule }) => rule)
    expect(rules).not.toContain('cadenceBounds')
    const leads = ride.sections.flatMap(({ lead }) => lead ?? [])
    expect(leads.every((foot, i) => i === 0 || foot !== leads[i - 1])).toBe(true)
  })

  it.each([
    [104, true],
    [140, false],
    [190, true],
  ])('rolls the legs out off the beat of a last song at %d a minute: %s', (bpm, isRolled) => {
    const sections = [128, 92, 140, 64, bpm].map((beats, i) => aSection(`s${i}`, { song: aSong(`m${i}`, { grid: gridOfTempo(beats) }) }))
    const { ride } = roughIn({ ...twelveSongs('mixed', { sections }), slotMinutes: 20 }, { seed: 1 })!
    const flush = computeRide(ride).blocks.filter(({ block }) => block.terrain === 'flush')
    expect(flush).not.toEqual([])
    for (const { block } of flush)
      expect([block.strikesPerBeat, block.cadence]).toEqual(isRolled ? [null, { rpm: 75 }] : [undefined, undefined])
  })

  it('rides a tempo between the windows off the beat, and says so', () => {
    const between = aSection('s', { song: aSong('odd', { grid: gridOfTempo(115) }) })
    const draft = roughIn(twelveSongs('mixed', { sections: [...twelveSongs().sections.slice(0, 3), between] }), { seed: 1 })!
    expect(draft.ride.sections[3]!.song!.strikesPerBeat).toBeNull()
    expect(told(draft.songs[3]!.text)).toContain('off the beat')
  })
})

/** Loudness of a song of 215 seconds: verses at one level, choruses at another, half a minute each. */
const verseAndChorus = (quiet: number, loud: number) =>
  Array.from({ length: 215 }, (_, second) => (Math.floor(second / 30) % 2 === 0 ? quiet : loud))

describe('a rough draft of songs whose sound is known', () => {
  const someLoudness = fc.array(fc.double({ min: -45, max: -5, noNaN: true }), { minLength: 1, maxLength: 24 }).map((levels) =>
    // Stretches of a quarter of a minute, as songs have them.
    levels.flatMap((level) => Array.from({ length: 15 }, () => level)),
  )
  const someDrive = fc.record(
    { energy: fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const, 5 as const), loudness: someLoudness },
    { requiredKeys: [] },
  )

  it('is a ride that opens again, whole on its music, with no problem and hardly a warning, and the same for the same seed', () => {
    fc.assert(
      fc.property(arbitrarySongList, fc.array(someDrive, { minLength: 20, maxLength: 20 }), fc.integer(), (ride, known, seed) => {
        const drives = new Map(ride.sections.map(({ song }, index) => [song!.id, known[index]!]))
        const { ride: drafted } = roughIn(ride, { seed, drives })!
        expect(roughIn(ride, { seed, drives })!.ride).toEqual(drafted)
        expectSound(drafted)
      }),
      { numRuns: 60 },
    )
  })

  it('works where a song is loud and eases where it is quiet', () => {
    const drives = new Map(twelveSongs().sections.map(({ song }) => [song!.id, { loudness: verseAndChorus(-20, -10) }]))
    const { ride, songs } = roughIn(twelveSongs(), { seed: 1, aim: 'climbs', drives })!
    const blocks = computeRide(ride).blocks.filter(({ section, block }) => section === 2 && block.terrain === 'hill')
    const song = ride.sections[2]!.song!
    const chorus = (from: number, to: number) => {
      const middle = (secondAt(song.grid!, from) + secondAt(song.grid!, to)) / 2
      return Math.floor(middle / 30) % 2 === 1
    }
    const [loud, quiet] = [true, false].map((wanted) =>
      blocks.filter(({ countFrom, countTo }) => chorus(countFrom!, countTo!) === wanted).map(({ block }) => block.effort.to),
    )
    // Steps of a phrase that straddles an edge may fall to either side of it, so the means are compared.
    const mean = (efforts: number[]) => efforts.reduce((sum, effort) => sum + effort, 0) / efforts.length
    expect(mean(loud!)).toBeGreaterThan(mean(quiet!) + 1)
    expect(told(songs[2]!.text)).toMatch(/It is loud from 0:\d\d/)
  })

  it('finishes on the most driving song about there, and recovers on the calmest', () => {
    const plain = roughIn(twelveSongs(), { seed: 1 })!
    const finishOf = ({ songs }: typeof plain) => songs.findIndex(({ text }) => told(text).includes(', the finish'))
    const recoveryOf = ({ songs }: typeof plain) => songs.findIndex(({ text }) => told(text).includes(': recovery'))
    const [finish, recovery] = [finishOf(plain), recoveryOf(plain)]
    const driven = (index: number, energy: 1 | 5) => {
      const drives = new Map(twelveSongs().sections.map(({ song }, at) => [song!.id, { energy: at === index ? energy : (3 as const) }]))
      return roughIn(twelveSongs(), { seed: 1, drives })!
    }
    expect(recoveryOf(driven(recovery + 1, 1))).toBe(recovery + 1)
    const later = driven(recovery + 1, 1)
    expect(finishOf(later)).toBe(finish)
    expect(told(later.songs[recovery + 1]!.text)).toContain('energy 1 of 5')
  })

  it('is another one for another seed, and none of it depends on what is known of songs that are no longer there', () => {
    const drives = new Map(twelveSongs().sections.map(({ song }) => [song!.id, { loudness: verseAndChorus(-20, -10) }]))
    const drafts = [1, 2, 3, 4, 5, 6].map((seed) => JSON.stringify(roughIn(twelveSongs(), { seed, drives })!.ride))
    expect(new Set(drafts).size).toBe(6)
    expect(roughIn(twelveSongs(), { seed: 1, drives: new Map([['gone', { energy: 5 as const }]]) })!.ride).toEqual(
      roughIn(twelveSongs(), { seed: 1 })!.ride,
    )
  })
})

describe('what is asked of a draft', () => {
  it('is another one for another seed', () => {
    const drafts = [1, 2, 3, 4, 5, 6].map((seed) => JSON.stringify(roughIn(twelveSongs(), { seed })!.ride))
    expect(new Set(drafts).size).toBe(6)
  })

  it('says nothing of a beat where no tempo is known', () => {
    const unknown = twelveSongs('mixed', {
      sections: TEMPOS.map((_, i) => aSection(`s${i}`, { song: { ...aSong(`song${i}`), grid: undefined, lengthSeconds: 215 } as Song })),
    })
    const ground = told(roughIn(unknown, { seed: 1 })!.arc[2]!)
    expect(ground).toMatch(/^No tempo is known, so variety decides/)
    expect(ground).not.toContain('beat')
    expect(told(roughIn(twelveSongs(), { seed: 1 })!.arc[2]!)).toMatch(/^Tempo decides what is climbed, run, or pushed: .*beat/)
  })

  it('follows its aim', () => {
    const secondsOn = (terrain: Terrain, aim: Aim) =>
      [1, 2, 3]
        .flatMap((seed) => computeRide(roughIn(twelveSongs(), { seed, aim })!.ride).blocks)
        .filter(({ block }) => block.terrain === terrain)
        .reduce((sum, { from, to }) => sum + to - from, 0)
    expect(secondsOn('hill', 'climbs')).toBeGreaterThan(secondsOn('hill', 'intervals'))
    expect(secondsOn('push', 'intervals')).toBeGreaterThan(secondsOn('push', 'climbs'))
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
      const { ride } = roughIn(twelveSongs('mixed', { avoidMoves: ['jumps', 'side leans', 'hovering'] }), { seed, aim: 'rhythm' })!
      const avoided = blocksOf(ride).filter(
        ({ move, terrain, posture }) => move?.name === 'side lean' || terrain === 'jumps' || posture === 'hovering',
      )
      expect(avoided).toEqual([])
    }
  })

  it('puts choruses where the song’s marks have them', () => {
    const marks = [0, 64, 128, 192, 256].map((count, i) => ({ count, label: i % 2 === 0 ? 'verse' : 'chorus' }))
    const ride = twelveSongs()
    Object.assign(ride.sections, { 3: { ...ride.sections[3]!, song: { ...ride.sections[3]!.song!, marks } } })
    const { ride: drafted } = roughIn(ride, { seed: 2, aim: 'climbs' })!
    const starts = computeRide(drafted)
      .blocks.filter(({ section }) => section === 3)
      .map(({ countFrom }) => countFrom)
    for (const { count } of marks.slice(0, 4)) expect(starts).toContain(count)
  })

  it('ends songs earlier, at phrases, where they are longer than the slot', () => {
    const ride = twelveSongs('mixed', { slotMinutes: 40 })
    const { ride: drafted } = roughIn(ride, { seed: 1 })!
    expect(computeRide(drafted).overall.slack).toBeGreaterThanOrEqual(0)
    expect(drafted.sections.some(({ outCount }) => outCount !== undefined && outCount % 32 === 0)).toBe(true)
    const tooMany = roughIn(twelveSongs('mixed', { slotMinutes: 20 }), { seed: 1 })!
    expect(told(tooMany.arc.at(-1)!)).toContain('over class length')
  })

  it('is one change, made to the ride it was proposed for only', () => {
    const ride = twelveSongs()
    const { command, ride: drafted } = roughIn(ride, { seed: 7 })!
    expect(command.apply(ride)).toBe(drafted)
    expect(told(command.label)).toBe('Drafted 12 songs (draft 7)')
    const other = twelveSongs()
    expect(command.apply(other)).toBe(other)
  })
})
