import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatSetting, formatSettingRange, formatSignedSetting } from '#units/formatSetting.ts'
import { parseSetting } from '#units/parseSetting.ts'
import { parseSettingRange } from '#units/parseSettingRange.ts'
import { measures } from '#words/en/measures.ts'

const knob = { unit: 'turn', stepsPerUnit: 4 }
const NOT_TURNS = { kind: 'notSetting', unit: 'turn', example: 6, stepsPerUnit: 4 }
const levels = { unit: 'level', stepsPerUnit: 1 }
const thirds = { unit: 'turn', stepsPerUnit: 3 }
const tenths = { unit: 'gear', stepsPerUnit: 10 }

describe('formatSetting', () => {
  it.each([
    [6, 4, '1½'],
    [-3, 4, '−¾'],
    [-5, 4, '−1¼'],
    [0, 4, '0'],
    [8, 4, '2'],
    [2, 3, '⅔'],
    [9, 8, '1⅛'],
    [13, 10, '1.3'],
    [-13, 10, '−1.3'],
    [15, 10, '1½'],
    [7, 1, '7'],
  ])('%d steps of 1/%d are %s', (steps, perUnit, text) => {
    expect(formatSetting(steps, perUnit)).toBe(text)
  })

  it('writes the sign of a change', () => {
    expect(formatSignedSetting(3, 4)).toBe('+¾')
    expect(formatSignedSetting(-3, 4)).toBe('−¾')
    expect(formatSignedSetting(0, 4)).toBe('0')
  })

  it('keeps a minus and a dash apart', () => {
    expect(formatSettingRange({ from: 6, to: 8 }, 4)).toBe('1½–2')
    expect(formatSettingRange({ from: 6, to: 6 }, 4)).toBe('1½')
    expect(formatSettingRange({ from: -2, to: 2 }, 4)).toBe('−½ to ½')
  })
})

describe('parseSetting', () => {
  it.each([
    ['1½', 6],
    ['1 ½', 6],
    ['1 1/2', 6],
    ['1-1/2', 6],
    ['1.5', 6],
    ['1,5', 6],
    ['3/4', 3],
    ['¾', 3],
    ['+¾', 3],
    ['+ 3/4', 3],
    ['-1.25', -5],
    ['−1¼', -5],
    ['1½ turns', 6],
    ['1 turn', 4],
    ['1½ Umdrehungen', 6],
    ['¾ Umdrehung', 3],
    ['0', 0],
    ['-0', 0],
    ['.5', 2],
    ['2 4/8', 10],
  ])('reads %s as %d quarter turns', (text, steps) => {
    expect(parseSetting(text, knob)).toEqual({ ok: true, value: steps })
  })

  it('takes a rounded decimal for the step it stands for', () => {
    expect(parseSetting('0.33', thirds)).toEqual({ ok: true, value: 1 })
    expect(parseSetting('1.667', thirds)).toEqual({ ok: true, value: 5 })
    expect(parseSetting('5.01', levels).ok).toBe(false)
  })

  it.each([
    ['1.3', knob, { kind: 'noSuchStep', low: 5, high: 6, stepsPerUnit: 4 }],
    ['-0.3', knob, { kind: 'noSuchStep', low: -2, high: -1, stepsPerUnit: 4 }],
    ['5½', levels, { kind: 'noSuchStep', low: 5, high: 6, stepsPerUnit: 1 }],
    ['heavy', knob, NOT_TURNS],
    ['', levels, { kind: 'notSetting', unit: 'level', example: 2, stepsPerUnit: 1 }],
    ['1 3/2', knob, NOT_TURNS],
    ['1/0', knob, NOT_TURNS],
  ])('refuses %s', (text, scale, problem) => {
    expect(parseSetting(text, scale)).toEqual({ ok: false, problem })
  })

  it('reads back every setting it writes', () => {
    const scale = fc.constantFrom(knob, levels, thirds, tenths, { unit: 'turn', stepsPerUnit: 8 })
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 400 }), scale, (steps, bike) => {
        expect(parseSetting(formatSetting(steps, bike.stepsPerUnit), bike)).toEqual({ ok: true, value: steps })
      }),
    )
  })
})

describe('parseSettingRange', () => {
  it.each([
    ['5–6', 20, 24],
    ['5-6', 20, 24],
    ['5 to 6', 20, 24],
    ['5 to 6 turns', 20, 24],
    ['5 bis 6', 20, 24],
    ['5 bis 6 Umdrehungen', 20, 24],
    ['auf 3–4', 12, 16],
    ['5..6', 20, 24],
    ['1½–2', 6, 8],
    ['1 1/2 - 2', 6, 8],
    ['1½', 6, 6],
    ['-½ to ½', -2, 2],
    ['−1–−½', -4, -2],
    ['0-1/2', 0, 2],
    ['1-1/2', 6, 6],
    ['to 3', 12, 12],
    ['to 3–4', 12, 16],
  ])('reads %s', (text, from, to) => {
    expect(parseSettingRange(text, knob)).toEqual({ ok: true, value: { from, to } })
  })

  it.each([
    ['6-5', { kind: 'highEndFirst' }],
    ['5-6.3', { kind: 'noSuchStep', low: 25, high: 26, stepsPerUnit: 4 }],
    ['5 to', NOT_TURNS],
    ['', NOT_TURNS],
  ])('refuses %s', (text, problem) => {
    expect(parseSettingRange(text, knob)).toEqual({ ok: false, problem })
  })

  it.each([
    ['3+', 12],
    ['3 +', 12],
    ['1½+', 6],
    ['1 1/2+', 6],
    ['+3+', 12],
    ['3 or more', 12],
    ['3 Or More', 12],
    ['3 turns or more', 12],
    ['3 or more turns', 12],
    ['3 turns+', 12],
    ['at least 3', 12],
    ['to at least 3', 12],
    ['at least 3 turns', 12],
    ['3 oder mehr', 12],
    ['3 Umdrehungen oder mehr', 12],
    ['mindestens 3', 12],
    ['To 3 or more', 12],
    ['at least 3 or more', 12],
    ['−½ or more', -2],
  ])('reads %s as open upwards', (text, from) => {
    expect(parseSettingRange(text, knob)).toEqual({ ok: true, value: { from, to: from, orMore: true } })
  })

  it.each([
    ['3-4+', { kind: 'openRange' }],
    ['at least 3 to 4', { kind: 'openRange' }],
    ['3.3 or more', { kind: 'noSuchStep', low: 13, high: 14, stepsPerUnit: 4 }],
    ['at least', NOT_TURNS],
    ['or more', NOT_TURNS],
    ['+', NOT_TURNS],
  ])('refuses %s', (text, problem) => {
    expect(parseSettingRange(text, knob)).toEqual({ ok: false, problem })
  })

  it('reads back every open total it writes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -80, max: 80 }), fc.constantFrom(knob, levels, thirds, tenths), (from, bike) => {
        const open = { from, to: from, orMore: true as const }
        expect(parseSettingRange(measures.settingRange(open, bike.stepsPerUnit), bike)).toEqual({ ok: true, value: open })
      }),
    )
  })

  it('reads back every range it writes', () => {
    const ends = fc.tuple(fc.integer({ min: -80, max: 80 }), fc.integer({ min: 0, max: 80 }))
    fc.assert(
      fc.property(ends, fc.constantFrom(knob, levels, thirds, tenths), ([from, width], bike) => {
        expect(parseSettingRange(formatSettingRange({ from, to: from + width }, bike.stepsPerUnit), bike)).toEqual({
          ok: true,
          value: { from, to: from + width },
        })
      }),
    )
  })

  it('never throws', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(typeof parseSettingRange(text, knob).ok).toBe('boolean')
      }),
    )
  })
})
