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
/** Remy leads the second song. */
const shared: Ride = {
  ...spark,
  sections: spark.sections.map((section, index) =>
    index === 1 ? { ...section, blocks: section.blocks.map((item) => ({ ...(item as Block), leader: remy })) } : section,
  ),
}

test('a sheet for both says nothing of hands while one leads all of it', () => {
  expect(contentsOf(spark).bands.flatMap(({ rows }) => rows.flatMap(({ handOver }) => handOver ?? []))).toEqual([])
})

test('every song says who has it: sections stand on pages of their own', () => {
  const starts = contentsOf(shared).bands.map(({ rows }) => rows[0]!.handOver)
  expect(starts).toEqual([
    'OT leads and speaks',
    'over to RC',
    'over to OT',
    'OT leads and speaks',
    'OT leads and speaks',
    'OT leads and speaks',
  ])
})

test('a sheet for one marks the blocks of the other, and says whose it is', () => {
  const { bands, facts, legend } = contentsOf(shared, remy)
  expect(bands.map(({ rows }) => rows.every(({ mine }) => mine))).toEqual([false, true, false, false, false, false])
  expect(facts).toContain('for Remy Castellane-Voss')
  expect(bands[1]!.rows[0]!.handOver).toBe('over to you')
  expect(legend.map(({ text }) => text)).toContain('Odalys Thornquill')
  expect(contentsOf(shared).bands.every(({ rows }) => rows.every(({ mine }) => mine))).toBe(true)
})
