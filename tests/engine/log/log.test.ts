import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { novelty } from '#engine/log/novelty.ts'
import { type ClassPattern, patternOf, songKey } from '#engine/log/pattern.ts'
import { repeatsOf } from '#engine/log/repeats.ts'
import { classesInSlot, inUsualRoom, slotOf } from '#engine/log/slot.ts'
import { songsUsed } from '#engine/log/songsUsed.ts'
import { taughtOf } from '#engine/log/taughtOf.ts'
import { loadOf, weekOf } from '#engine/log/weekOf.ts'
import { readTaught, type TaughtClass, writeTaught } from '#plan/kept/taught.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { told } from '#tests/support/told.ts'

const planned = (ride: Ride) => ({ ride, report: computeRide(ride) })
const spark = planned({ ...demoRide('spark'), location: 'Studio B' })
const ridge = planned(demoRide('ridge'))
const when = (day: string, id = day) => ({ id, day, bookedAt: '18:30', startedAt: '18:34' })
const sparkOn = (day: string): TaughtClass => taughtOf(spark, when(day))

describe('an entry from the plan', () => {
  test('is the plan’s songs and blocks as they were meant, and its load the plan’s', () => {
    const entry = sparkOn('2026-11-25')
    expect(entry.sections.map(({ title, outcome }) => [title, outcome])).toEqual(
      spark.ride.sections.map(({ song }) => [song!.title, 'taught']),
    )
    expect(entry.sections.reduce((sum, { blocks }) => sum + blocks.length, 0)).toBe(42)
    expect(loadOf(entry)).toBeCloseTo(spark.report.overall.sessionLoad, 2)
  })

  test('is read as it was written, of any ride', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 4 }), (ride) => {
        const entry = taughtOf(planned(ride), when('2026-02-28'))
        expect(readTaught(writeTaught(entry))).toEqual(JSON.parse(JSON.stringify(entry)))
      }),
      { numRuns: 40 },
    )
  })

  test.each(['', '{', 'null', '{"taught":1}'])('%j is none', (text) => expect(readTaught(text)).toBeNull())

  test('of a form to come, of no day or with six stars is none', () => {
    const entry = sparkOn('2026-11-25')
    expect(readTaught(writeTaught(entry).replace('"taught":1', '"taught":2'))).toBeNull()
    expect(readTaught(writeTaught({ ...entry, day: '2026-02-30' }))).toBeNull()
    expect(readTaught(writeTaught({ ...entry, sections: [{ ...entry.sections[0]!, stars: 6 }] }))).toBeNull()
  })

  test('knows what was skipped and changed where the class was led from the screen', () => {
    const log = {
      slotFrom: 0,
      startedAt: 0,
      events: [
        { kind: 'cut', cuts: [{ kind: 'song', section: 3 }], at: 60 },
        { kind: 'again', at: 160 },
      ],
    } as const
    const led = ledClass(spark, log)
    const entry = taughtOf(spark, when('2026-11-25'), led)
    expect(entry.sections.map(({ outcome }) => outcome)).toEqual(['taught', 'changed', 'taught', 'skipped', 'taught', 'taught'])
    expect(entry.sections[3]!.seconds).toBe(0)
    expect(loadOf(entry)).toBeLessThan(loadOf(sparkOn('2026-11-25')))
    expect(
      taughtOf(spark, when('2026-11-25'), ledClass(spark, { ...log, events: [] })).sections.every(({ outcome }) => outcome === 'taught'),
    ).toBe(true)
  })

  test('a song left as soon as it began was skipped, one left later was played', () => {
    const second = spark.report.sections[1]!.one
    const left = (after: number) => {
      const led = ledClass(spark, { slotFrom: 0, startedAt: 0, events: [{ kind: 'skipSong', at: second + after }] })
      return taughtOf(spark, when('2026-11-25'), led)
    }
    expect(left(4).sections[1]).toMatchObject({ outcome: 'skipped', seconds: 0 })
    expect(patternOf(left(4)).songs.has(songKey(left(4).sections[1]!))).toBe(false)
    expect(songsUsed([left(4)], '2026-11-25', '2026-11-25')).toHaveLength(5)
    expect(left(60).sections[1]).toMatchObject({ outcome: 'changed', seconds: expect.closeTo(60, 2) })
  })
})

test('of a class that was broken off, what did not come is skipped and the song it ended in is as long as it was', () => {
  const [second, third] = spark.report.sections.slice(1, 3).map(({ one }) => one) as [number, number]
  const at = (second + third) / 2
  const led = ledClass(spark, { slotFrom: 0, startedAt: 0, events: [{ kind: 'breakOff', at }] })
  const { sections } = taughtOf(spark, when('2026-11-25'), led)
  expect(sections.map(({ outcome }) => outcome)).toEqual(['taught', 'changed', 'skipped', 'skipped', 'skipped', 'skipped'])
  expect(sections[1]!.seconds).toBeCloseTo(at - second, 2)
  expect(sections.slice(2).every(({ seconds }) => seconds === 0)).toBe(true)
})

describe('novelty (1 − Σ λʲ·shared ÷ Σ λʲ; common practice)', () => {
  const pattern = (songs: string[], moves: string[], arc: number[]): ClassPattern => ({ songs: new Set(songs), moves: new Set(moves), arc })
  const rising = [1, 2, 3, 4]

  test('known answers by hand', () => {
    const own = pattern(['a', 'b'], ['x', 'y'], rising)
    expect(novelty(own, [])).toBeNull()
    expect(novelty(own, [own])).toBeCloseTo(0, 12)
    expect(novelty(own, [pattern(['c'], ['z'], [4, 3, 2, 1])])).toBe(1)
    // Half the songs, none of the moves, the same arc: shared ½·½ + 0 + 0.2·1 = 0.45.
    const half = pattern(['a', 'q'], ['z'], [2, 4, 6, 8])
    expect(novelty(own, [half])).toBeCloseTo(1 - 0.45, 12)
    // A repeat a class back, and something all new last week: shared 0.7 ÷ 1.7.
    expect(novelty(own, [pattern([], [], []), own])).toBeCloseTo(1 - 0.7 / (1 + 0.7), 12)
  })

  test('lies between 0 and 1 for any classes, is 0 for a repeat', () => {
    const any = fc.record({
      songs: fc.array(fc.constantFrom('a', 'b', 'c')).map((songs) => new Set(songs)),
      moves: fc.array(fc.constantFrom('x', 'y', 'z')).map((moves) => new Set(moves)),
      arc: fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 5, maxLength: 5 }),
    })
    fc.assert(
      fc.property(any, fc.array(any, { minLength: 1, maxLength: 6 }), (own, before) => {
        const value = novelty(own, before)!
        expect(value).toBeGreaterThanOrEqual(-1e-12)
        expect(value).toBeLessThanOrEqual(1 + 1e-12)
      }),
    )
    expect(novelty(patternOf(sparkOn('2026-11-25')), [patternOf(sparkOn('2026-11-18'))])).toBeCloseTo(0, 9)
  })

  test('skipped songs and blocks are no part of what riders know', () => {
    const entry = sparkOn('2026-11-25')
    const skipped = {
      ...entry,
      sections: entry.sections.map((section, index) => (index === 2 ? { ...section, outcome: 'skipped' as const } : section)),
    }
    expect(patternOf(skipped).songs.size).toBe(5)
    expect(patternOf(entry).arc).toHaveLength(100)
  })

  test('one song is the same however it is typed', () => {
    expect(songKey({ title: ' Señor — Tin  Kites!', artist: 'NINE' })).toBe(songKey({ title: 'senor tin kites', artist: 'nine' }))
    expect(songKey({ title: 'a', artist: 'b' })).not.toBe(songKey({ title: 'ab' }))
  })
})

describe('what a slot has met before', () => {
  const weeks = ['2026-11-18', '2026-11-11', '2026-11-04'].map(sparkOn)
  const { key } = slotOf(sparkOn('2026-11-25'))

  test('a slot is a weekday, a time and a room', () => {
    expect(told(slotOf(sparkOn('2026-11-25')).name)).toBe('Wednesday 6:30 PM, Studio B')
    expect(slotOf({ ...sparkOn('2026-11-25'), room: ' studio b ' }).key).toBe(key)
    for (const other of [{ day: '2026-11-24' }, { bookedAt: '19:30' }, { room: 'elsewhere' }])
      expect(slotOf({ ...sparkOn('2026-11-25'), ...other }).key).not.toBe(key)
    expect(classesInSlot([...weeks, sparkOn('2026-11-25'), sparkOn('2026-11-17')], key, '2026-11-25').map(({ day }) => day)).toEqual(
      weeks.map(({ day }) => day),
    )
  })

  test('a plan that does not say the room is taught where its weekday and time last were', () => {
    const elsewhere = { ...sparkOn('2026-11-11'), room: 'elsewhere' }
    const later = { ...sparkOn('2026-11-18'), bookedAt: '19:30', room: 'an hour later' }
    const unsaid = { ...sparkOn('2026-11-25'), room: '' }
    expect(inUsualRoom(unsaid, [sparkOn('2026-11-04'), elsewhere, later, sparkOn('2026-11-04')]).room).toBe('elsewhere')
    expect(inUsualRoom(unsaid, [later]).room).toBe('')
    expect(inUsualRoom(sparkOn('2026-11-25'), [elsewhere]).room).toBe('Studio B')
  })

  test('songs of last time and songs of most times should rest', () => {
    const kept = (entry: TaughtClass, ...indices: number[]) => ({
      ...entry,
      sections: entry.sections.filter((_, index) => indices.includes(index)),
    })
    const before = [kept(weeks[0]!, 0), kept(weeks[1]!, 1, 2), kept(weeks[2]!, 1)]
    const { songs, compared } = repeatsOf(sparkOn('2026-11-25'), '2026-11-25', before)
    expect(compared).toBe(3)
    expect(songs.map(({ title, times, weeksAgo, rest }) => [title, times, weeksAgo, rest])).toEqual([
      ['Brickworks Elevator', 2, 2, false],
      ['Paper Comets over Harbour Nine', 1, 1, true],
      ['Tin Orchard Run', 1, 2, false],
    ])
    expect(repeatsOf(sparkOn('2026-11-25'), '2026-11-25', weeks).songs.every(({ rest }) => rest)).toBe(true)
  })

  test('another ride in the slot is mostly new, the same one is not', () => {
    const other = taughtOf(ridge, when('2026-11-25'))
    expect(repeatsOf(other, '2026-11-25', weeks).novelty).toBeGreaterThan(0.8)
    expect(repeatsOf(sparkOn('2026-11-25'), '2026-11-25', weeks).novelty).toBeCloseTo(0, 9)
    expect(repeatsOf(other, '2026-11-25', [])).toEqual({ novelty: null, compared: 0, songs: [] })
  })
})

describe('the leader’s own week', () => {
  const load = loadOf(sparkOn('2026-11-25'))

  test('adds up by day, Monday first, as session loads do', () => {
    const week = weekOf(
      [sparkOn('2026-11-25'), taughtOf(spark, when('2026-11-25', 'second')), sparkOn('2026-11-29'), sparkOn('2026-11-30')],
      '2026-11-26',
    )
    expect(week.first).toBe('2026-11-23')
    expect(week.days.map(({ classes }) => classes)).toEqual([0, 0, 2, 0, 0, 0, 1])
    expect(week.classes).toBe(3)
    expect(week.total).toBeCloseTo(3 * load, 6)
    // Days 0 0 2L 0 0 0 L: mean 3L/7, sample deviation of them by hand.
    const mean = (3 * load) / 7
    const deviation = Math.sqrt((5 * mean ** 2 + (2 * load - mean) ** 2 + (load - mean) ** 2) / 6)
    expect(week.monotony).toBeCloseTo(mean / deviation, 9)
    expect(week.strain).toBeCloseTo((week.total * mean) / deviation, 6)
  })

  test('begins on the day weeks begin with', () => {
    const week = weekOf([sparkOn('2026-11-22'), sparkOn('2026-11-28'), sparkOn('2026-11-29')], '2026-11-26', 6)
    expect(week.first).toBe('2026-11-22')
    expect(week.days.map(({ classes }) => classes)).toEqual([1, 0, 0, 0, 0, 0, 1])
  })

  test('a week off has no monotony', () => expect(weekOf([], '2026-11-25')).toMatchObject({ total: 0, monotony: null, strain: null }))
})

test('songs used are those that played, day by day, with what a licence asks for', () => {
  const entry: TaughtClass = { ...sparkOn('2026-11-25'), headCount: 17 }
  const skipped = entry.sections.map((section, index) => (index === 1 ? { ...section, outcome: 'skipped' as const, seconds: 0 } : section))
  const used = songsUsed([{ ...entry, sections: skipped }, sparkOn('2026-11-18'), sparkOn('2026-12-02')], '2026-11-18', '2026-11-30')
  expect(used).toHaveLength(11)
  expect(used.map(({ day }) => day)).toEqual([...Array(6).fill('2026-11-18'), ...Array(5).fill('2026-11-25')])
  expect(used.at(-1)).toEqual({
    day: '2026-11-25',
    startedAt: '18:34',
    room: 'Studio B',
    ride: 'Twenty-Minute Spark',
    title: 'Slow Boats, Warm Tin',
    artist: 'Maren Halfmoon Trio',
    seconds: 128,
    headCount: 17,
  })
})
