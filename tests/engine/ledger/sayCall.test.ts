import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { formatTotal, shortTotal } from '#engine/ledger/sayCall.ts'
import { english } from '#engine/speech/english/english.ts'
import { numberWords } from '#engine/speech/english/numberWords.ts'
import type { Resistance } from '#plan/model.ts'
import { sayChange } from '#tests/support/sayChange.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const scale = (unit: string, stepsPerUnit: number) => ({ unit, stepsPerUnit })
const QUARTERS = scale('turn', 4)
const LEVELS = scale('level', 1)

const formatChange = english.calls.small.change
const sayTotal = english.calls.total

describe('a change in words', () => {
  it.each([
    [1, QUARTERS, 'a quarter turn on'],
    [2, QUARTERS, 'half a turn on'],
    [-2, QUARTERS, 'half a turn off'],
    [3, QUARTERS, 'three quarters on'],
    [4, QUARTERS, 'one turn on'],
    [5, QUARTERS, 'one and a quarter on'],
    [-10, QUARTERS, 'two and a half off'],
    [-8, QUARTERS, 'two turns off'],
    [0, QUARTERS, 'stay'],
    [1, scale('turn', 8), 'an eighth of a turn on'],
    [3, scale('turn', 8), 'three eighths on'],
    [4, scale('turn', 8), 'half a turn on'],
    [13, scale('turn', 8), 'one and five eighths on'],
    [1, scale('turn', 2), 'half a turn on'],
    [3, scale('turn', 2), 'one and a half on'],
    [2, LEVELS, 'two levels on'],
    [-1, LEVELS, 'one level off'],
    [3, scale('level', 2), 'one and a half levels on'],
    [1, scale('level', 2), 'half a level on'],
    [3, scale('level', 4), 'three quarters of a level on'],
    [13, scale('gear', 10), 'one point three gears on'],
    [-3, scale('gear', 10), 'zero point three gears off'],
    [24, LEVELS, 'twenty-four levels on'],
  ])('%d of %o is %s', (steps, bike, words) => {
    expect(sayChange(steps, bike)).toBe(words)
  })

  it('is written small with a true minus and single-character fractions', () => {
    expect([3, -5, 0, 8].map((steps) => formatChange(steps, QUARTERS))).toEqual(['+¾', '−1¼', 'stay', '+2'])
    expect(formatChange(3, scale('turn', 8))).toBe('+⅜')
    expect(formatChange(-13, scale('gear', 10))).toBe('−1.3')
  })
})

describe('a total', () => {
  const state = (low: number | null, nominal: number, high: number | null) => ({ low, nominal, high })

  it('is written as one value, a range, or "or more"', () => {
    expect(formatTotal(state(6, 6, 6), QUARTERS)).toBe('1½')
    expect(formatTotal(state(12, 14, 16), QUARTERS)).toBe('3–4')
    expect(formatTotal(state(17, 17, null), QUARTERS)).toBe('4¼ or more')
    expect(shortTotal(formatTotal(state(17, 17, null), QUARTERS))).toBe('4¼+')
    expect(formatTotal(state(17, 17, 80), QUARTERS)).toBe('4¼–20')
    expect(formatTotal(state(null, 12, 14), QUARTERS)).toBe('3½ or less')
    expect(formatTotal(state(null, 12, null), QUARTERS)).toBe('3 or so')
    expect(formatTotal(state(80, 80, 80), QUARTERS)).toBe('20')
  })

  it('is spoken as a place', () => {
    expect(sayTotal(state(12, 12, 16), QUARTERS, 'base')).toBe('to three to four')
    expect(sayTotal(state(12, 12, 12), QUARTERS, 'base')).toBe('to three')
    expect(sayTotal(state(0, 0, 0), QUARTERS, 'base')).toBe('to base')
    expect(sayTotal(state(0, 0, 2), QUARTERS, 'loose')).toBe('to zero to a half')
    expect(sayTotal(state(-1, -1, -1), QUARTERS, 'base')).toBe('to a quarter under base')
    expect(sayTotal(state(9, 9, 11), LEVELS, 'loose')).toBe('to nine to eleven')
    expect(sayTotal(state(12, 12, null), QUARTERS, 'base')).toBe('to at least three')
    expect(sayTotal(state(null, 12, 12), QUARTERS, 'base')).toBe('to at most three')
    expect(sayTotal(state(null, 12, null), QUARTERS, 'base')).toBe('to about three')
  })
})

describe('calls of a ride', () => {
  it('are said by their kind, and totals as changes only between single values', () => {
    const calls: Resistance[] = [
      { kind: 'total', from: 4, to: 4 },
      { kind: 'keep' },
      { kind: 'change', mode: 'atLeast', steps: 6 },
      { kind: 'total', from: 12, to: 16 },
      { kind: 'change', mode: 'ifYouHaveIt', steps: 2 },
      { kind: 'byFeel', from: 8, to: 12 },
      { kind: 'total', from: 8, to: 8 },
      { kind: 'total', from: 12, to: 12, orMore: true },
      { kind: 'change', mode: 'exact', steps: -4 },
      { kind: 'byFeel', from: 6, to: 6, orMore: true },
      { kind: 'allOff' },
    ]
    const blocks = calls.map((resistance, i) => aBlock(`b${i}`, { ...inSeconds(60), resistance }))
    const report = computeRide({ ...smallRide(), sections: [aSection('s', { blocks })] })
    expect(report.blocks.map(({ ledger }) => [ledger.call, ledger.change, ledger.total])).toEqual([
      ['one turn on', '+1', '1'],
      ['stay', 'stay', '1'],
      ['at least one and a half on', '+1½ or more', '2½ or more'],
      ['to three to four', 'to 3–4', '3–4'],
      ['half a turn on if you have it', '+½ if you have it', '3–4½'],
      ['by feel, two to three', 'to 2–3 by feel', '2–3'],
      ['to two', 'to 2', '2'],
      ['to at least three', 'to 3 or more', '3 or more'],
      ['one turn off', '−1', '2 or more'],
      ['by feel, at least one and a half', 'to 1½ or more by feel', '1½ or more'],
      ['all off', 'all off', '−2'],
    ])
  })
})

it('writes numbers in words', () => {
  expect([0, 7, 13, 20, 24, 99, 100, 120, 345, 1000].map(numberWords)).toEqual([
    'zero',
    'seven',
    'thirteen',
    'twenty',
    'twenty-four',
    'ninety-nine',
    'one hundred',
    'one hundred and twenty',
    'three hundred and forty-five',
    '1000',
  ])
})
