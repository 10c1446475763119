import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatClock } from '#units/formatClock.ts'
import { parseClock } from '#units/parseClock.ts'
import { parseWallClock } from '#units/parseWallClock.ts'

describe('parseClock', () => {
  it.each([
    ['3:45', 225],
    [' 3:45.5 ', 225.5],
    ['3:45,5', 225.5],
    ['1:02:05', 3725],
    ['75:00', 4500],
    ['45', 45],
    ['45 s', 45],
    ['2.5', 2.5],
    ['3 min', 180],
    ['3 Minuten 45 Sekunden', 225],
    ['1.5 min', 90],
    ['3m45s', 225],
    ['3 min 45 s', 225],
    ['3′45″', 225],
    ['3\'45"', 225],
    ['0', 0],
  ])('reads %s as %d s', (text, seconds) => {
    expect(parseClock(text)).toEqual({ ok: true, value: seconds })
  })

  it.each([
    ['3:75', 'secondsOver'],
    ['1:75:00', 'minutesOver'],
    ['3:5', 'oneFigure'],
    ['', 'notClock'],
    ['soon', 'notClock'],
    ['-3:45', 'notClock'],
    ['3:', 'notClock'],
  ])('refuses %s: %s', (text, kind) => {
    expect(parseClock(text)).toEqual({ ok: false, problem: { kind } })
  })

  it('reads back every whole second it writes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359_999 }), (seconds) => {
        expect(parseClock(formatClock(seconds))).toEqual({ ok: true, value: seconds })
      }),
    )
  })

  it('never throws', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(typeof parseClock(text).ok).toBe('boolean')
      }),
    )
  })
})

describe('parseWallClock', () => {
  it.each([
    ['18:30', '18:30'],
    ['6:30 pm', '18:30'],
    ['6.30pm', '18:30'],
    ['6 pm', '18:00'],
    ['12 am', '00:00'],
    ['12:15 pm', '12:15'],
    ['1830', '18:30'],
    ['18h30', '18:30'],
    ['7:05', '07:05'],
  ])('reads %s as %s', (text, clock) => {
    expect(parseWallClock(text)).toEqual({ ok: true, value: clock })
  })

  it.each(['24:00', '18:60', '13 pm', '0 pm', '18', 'evening', ''])('refuses %s', (text) => {
    expect(parseWallClock(text)).toEqual({ ok: false, problem: { kind: 'notWallClock' } })
  })
})
