import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatEnd, formatMarks, formatQuiet, formatStart, parseEnd, parseMarks, parseQuiet, parseStart } from '#plan/songs/songPlace.ts'
import { say } from '#words/said.ts'

describe('places in a song', () => {
  it.each([
    [0, '1', '0'],
    [256, '33', '32'],
    [260, '33+4', '32+4'],
  ])('count %d is the start of %s and the end of %s', (count, start, end) => {
    expect(formatStart(count, 8)).toBe(start)
    expect(formatEnd(count, 8)).toBe(end)
  })

  it('reads back what it writes', () => {
    fc.assert(
      fc.property(fc.nat(4000), fc.constantFrom(6, 8), (count, eight) => {
        expect(parseStart(formatStart(count, eight), eight)).toEqual({ ok: true, value: count })
        expect(parseEnd(formatEnd(count, eight), eight)).toEqual({ ok: true, value: count })
      }),
    )
  })

  it('refuses counts that make another eight', () => {
    expect(parseStart('9+8', 8)).toEqual({ ok: false, problem: say('songPlaces.afterPlus', { unit: 8 }) })
    expect(parseEnd('nine', 6)).toEqual({ ok: false, problem: say('songPlaces.end', { unit: 6 }) })
  })
})

describe('quiet windows', () => {
  it('run from the start of one eight to the end of another', () => {
    expect(parseQuiet('65–72; 33-40\n9', 8)).toEqual({
      ok: true,
      value: [
        { from: 64, to: 72 },
        { from: 256, to: 320 },
        { from: 512, to: 576 },
      ],
    })
    expect(formatQuiet([{ from: 256, to: 320 }], 8)).toBe('33–40')
    expect(parseQuiet(' ', 8)).toEqual({ ok: true, value: [] })
    expect(parseQuiet('the chorus', 8)).toEqual({
      ok: false,
      problem: say('songPlaces.notStretch', { line: 'the chorus' }),
    })
    // The end of eight 8 is the start of eight 9.
    for (const backwards of ['72–65', '9–8'])
      expect(parseQuiet(backwards, 8)).toEqual({ ok: false, problem: say('songPlaces.endsFirst', { line: backwards }) })
  })
})

describe('marks', () => {
  it('are lines of an eight and a name', () => {
    expect(parseMarks('33 chorus two\n\n 1 intro', 8)).toEqual({
      ok: true,
      value: [
        { count: 0, label: 'intro' },
        { count: 256, label: 'chorus two' },
      ],
    })
    expect(formatMarks([{ count: 260, label: 'break' }], 8)).toBe('33+4 break')
  })
})
