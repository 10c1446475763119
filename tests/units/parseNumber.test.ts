import { describe, expect, it } from 'vitest'
import { formatNumber } from '#units/formatNumber.ts'
import { parseDecimal } from '#units/parseDecimal.ts'
import { parseNumber } from '#units/parseNumber.ts'

const tempo = { subject: 'The tempo', min: 30, max: 300, decimals: 2, unit: 'beats a minute', suffixes: ['bpm'], example: '128 or 127.6' }

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
    ['', 'The tempo is a number, such as 128 or 127.6.'],
    ['fast', 'The tempo is a number, such as 128 or 127.6.'],
    ['1e3', 'The tempo is a number, such as 128 or 127.6.'],
    ['20', 'The tempo is between 30 and 300 beats a minute.'],
    ['127.654', 'The tempo takes at most 2 decimal places.'],
  ])('refuses %s', (text, message) => {
    expect(parseNumber(text, tempo)).toEqual({ ok: false, problem: message })
  })

  it('asks for a whole number where there are no decimals', () => {
    const rules = { subject: 'The slot', min: 5, max: 180, unit: 'minutes', example: '45' }
    expect(parseNumber('45.5', rules)).toEqual({ ok: false, problem: 'The slot is a whole number.' })
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
