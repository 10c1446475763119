import { expect, test } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { handOverOf } from '#features/sheet/contents/handOver.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import type { Block, Ride } from '#plan/model.ts'
import type { Roles } from '#plan/rolesOf.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const spark = demoRide('spark')
const [odalys, remy] = spark.leaders.map(({ id }) => id) as [string, string]
const both = (leads: string, speaks = leads): Roles => ({ leads, speaks })

test.each([
  ['nobody changes', both(odalys), both(odalys), undefined, undefined],
  ['the start, for both', both(odalys), undefined, undefined, 'OT leads and speaks'],
  ['the start, for the one who leads', both(odalys), undefined, odalys, 'you lead and speak'],
  ['both change', both(remy), both(odalys), undefined, 'over to RC'],
  ['both change, for the one who takes over', both(remy), both(odalys), remy, 'over to you'],
  ['the microphone alone', both(odalys, remy), both(odalys), remy, 'microphone to you'],
  ['the lead alone', both(remy, odalys), both(odalys), undefined, 'over to RC, OT keeps the microphone'],
  ['the lead alone, for the one who keeps speaking', both(remy, odalys), both(odalys), odalys, 'over to RC, you keep the microphone'],
  ['both, to two people', both(remy, odalys), both(odalys, remy), remy, 'over to you, microphone to OT'],
] as const)('%s', (_, now, before, reader, said) => {
  expect(handOverOf(spark, now, before, reader)).toBe(said)
})

test('one leader alone is never named', () => {
  expect(handOverOf({ leaders: spark.leaders.slice(0, 1) }, both(odalys), undefined, odalys)).toBeUndefined()
})

const contentsOf = (ride: Ride, reader?: string) => sheetContents(ride, computeRide(ride), { date: 'today', songClock: 'left', reader })
/** The ride with the songs that Remy leads. */
const given = (songs: readonly number[]): Ride => ({
  ...spark,
  sections: spark.sections.map((section, index) => ({
    ...section,
    blocks: section.blocks.map((item) => ({ ...(item as Block), leader: songs.includes(index) ? remy : odalys })),
  })),
})
const shared = given([1])

test('a sheet for both says nothing of hands while one leads all of it', () => {
  expect(
    contentsOf(given([]))
      .bands.flatMap(({ handOver, rows }) => [handOver, ...rows.map((row) => row.handOver)])
      .filter(Boolean),
  ).toEqual([])
})

test('the first demo ride is led by two, a song each at least', () => {
  const leaders = contentsOf(spark, remy).bands.map(({ rows }) => rows.map(({ mine }) => mine))
  expect(leaders.map((rows) => rows.every((mine) => mine))).toEqual([false, false, false, true, false, false])
  expect(leaders.map((rows) => rows.some((mine) => mine))).toEqual([false, false, false, true, false, false])
})

test('every song says who has it: sections stand on pages of their own', () => {
  const starts = contentsOf(shared).bands.map(({ handOver }) => handOver)
  expect(starts).toEqual([
    'OT leads and speaks',
    'over to RC',
    'over to OT',
    'OT leads and speaks',
    'OT leads and speaks',
    'OT leads and speaks',
  ])
})

test('a change within a song stands where it comes, one with the song in its head alone', () => {
  const within: Ride = {
    ...given([]),
    sections: given([]).sections.map((section, index) => ({
      ...section,
      blocks: section.blocks.map((item, i) => ({ ...(item as Block), leader: index === 1 && i >= 5 ? remy : odalys })),
    })),
  }
  const [, second, third] = contentsOf(within).bands
  expect(second!.rows.map(({ handOver }) => handOver)).toEqual(second!.rows.map((_, i) => (i === 5 ? 'over to RC' : undefined)))
  expect([second!.handOver, third!.handOver]).toEqual(['OT leads and speaks', 'over to OT'])
  expect(third!.rows.every(({ handOver }) => handOver === undefined)).toBe(true)
})

test('a sheet for one marks the blocks of the other, and says whose it is', () => {
  const { bands, facts, legend } = contentsOf(shared, remy)
  expect(bands.map(({ rows }) => rows.every(({ mine }) => mine))).toEqual([false, true, false, false, false, false])
  expect(facts).toContain('for Remy Castellane-Voss')
  expect(bands[1]!.handOver).toBe('over to you')
  expect(legend.map(({ text }) => text)).toContain('Odalys Thornquill')
  expect(contentsOf(shared).bands.every(({ rows }) => rows.every(({ mine }) => mine))).toBe(true)
})
