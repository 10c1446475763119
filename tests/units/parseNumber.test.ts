import { describe, expect, it } from 'vitest'
import { formatNumber } from '#units/formatNumber.ts'
import { parseDecimal } from '#units/parseDecimal.ts'
import { parseNumber } from '#units/parseNumber.ts'

const tempo = { of: 'tempo', min: 30, max: 300, decimals: 2, suffixes: ['bpm'] } as const

describe('parseNumber', () => {
  it.each([
    ['128', 128],
    ['127.6', 127.6],
    ['127,6', 127.6],
    ['128 bpm', 128],
    ['128 BPM', 128],
  ])('reads %s', (text, value) => {
    expect(parseNumber(text, tempo)).toEqual({ ok: true, value })
  })

  it.each([
    ['', { kind: 'notNumber', of: 'tempo' }],
    ['fast', { kind: 'notNumber', of: 'tempo' }],
    ['1e3', { kind: 'notNumber', of: 'tempo' }],
    ['20', { kind: 'outside', of: 'tempo', min: 30, max: 300 }],
    ['127.654', { kind: 'tooFine', of: 'tempo', decimals: 2 }],
  ])('refuses %s', (text, problem) => {
    expect(parseNumber(text, tempo)).toEqual({ ok: false, problem })
  })

  it('asks for a whole number where there are no decimals', () => {
    expect(parseNumber('45.5', { of: 'classLength', min: 5, max: 180 })).toEqual({
      ok: false,
      problem: { kind: 'notWhole', of: 'classLength' },
    })
  })
})

describe('parseDecimal', () => {
  it.each([
    ['-2', -2],
    ['−2,5', -2.5],
    ['+ 3', 3],
    ['.5', 0.5],
    ['7.', 7],
    ['1 000', null],
    ['--1', null],
    ['NaN', null],
  ])('reads %s as %s', (text, value) => {
    expect(parseDecimal(text)).toBe(value)
  })
})

describe('formatNumber', () => {
  it('drops zeros and writes a true minus', () => {
    expect(formatNumber(127.6)).toBe('127.6')
    expect(formatNumber(128)).toBe('128')
    expect(formatNumber(-2.5)).toBe('−2.5')
    expect(formatNumber(-0.001)).toBe('0')
    expect(formatNumber(94.666667, 1)).toBe('94.7')
  })
})
