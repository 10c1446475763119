import { describe, expect, test } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import { readShorthand, shortenerOf, writeShorthand } from '#features/sheet/contents/shorthand.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const terms = [
  { short: 'TB', long: 'travel-back' },
  { short: 'stg', long: 'standing' },
  { short: 'stg cl', long: 'standing climb' },
]

describe('a dictionary', () => {
  test('is read from lines and written back', () => {
    expect(readShorthand(' TB =travel-back \n\nstg = standing\nstg cl = standing climb')).toEqual({ ok: true, terms })
    expect(readShorthand(writeShorthand(terms))).toEqual({ ok: true, terms })
    expect(readShorthand('')).toEqual({ ok: true, terms: [] })
  })

  test.each([
    ['TB', 'Write “TB” as an abbreviation, an equals sign, and what it stands for: TB = travel-back.'],
    ['= x', 'Write “= x” as an abbreviation, an equals sign, and what it stands for: TB = travel-back.'],
    ['a = jump\nb = Jump', '“Jump” has two abbreviations; keep one of them.'],
    [`a = ${'x'.repeat(80)}`, /too long/],
    [Array.from({ length: 61 }, (_, i) => `a${i} = word${i}x`).join('\n'), 'You can have up to 60 abbreviations.'],
  ])('“%s” is refused in one sentence', (text, problem) => {
    expect(readShorthand(text)).toEqual({ ok: false, problem: typeof problem === 'string' ? problem : expect.stringMatching(problem) })
  })
})

describe('shortening', () => {
  test.each([
    ['Standing climb, then Travel-backs.', 'stg cl, then TBs.'],
    ['notstanding, standings, standing-room', 'notstanding, stgs, stg-room'],
    ['Understanding', 'Understanding'],
    ['travel-back', 'TB'],
  ])('“%s” becomes “%s”', (text, short) => expect(shortenerOf(terms).shorten(text)).toBe(short))

  test('knows what it has used, and takes marks of patterns for what they are', () => {
    const { shorten, used } = shortenerOf([...terms, { short: '@', long: 'on 4 (fast)' }])
    expect(shorten('go on 4 (fast)')).toBe('go @')
    expect(used()).toEqual([{ short: '@', long: 'on 4 (fast)' }])
  })
})

test('a sheet prints the short forms, and its legend explains those it uses', () => {
  const ride = demoRide('spark')
  const shorthand = [...terms, { short: 'zz', long: 'never said' }]
  const { bands, legend } = sheetContents(ride, computeRide(ride), { date: 'today', songClock: 'left', shorthand })
  expect(bands[1]!.rows[4]!.notes).toEqual(['TB on 4'])
  expect(bands[1]!.rows[2]!.name).toBe('stg cl')
  const words = legend.flatMap(({ mark, text }) => (mark.kind === 'word' ? [`${mark.word} = ${text}`] : []))
  expect(words).toEqual(expect.arrayContaining(['TB = travel-back', 'stg cl = standing climb']))
  expect(words).not.toContain('zz = never said')
})
