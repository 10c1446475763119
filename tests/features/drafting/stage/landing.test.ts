import { describe, expect, it } from 'vitest'
import { landingAt } from '#features/drafting/stage/drag/landing.ts'
import type { Section } from '#plan/model.ts'

const UNIT = { eight: 8, phrase: 32, name: 'eight' } as const
const section = (marks: { count: number; label: string }[]) => ({ song: { marks } }) as unknown as Section

describe('where a pulled edge falls', () => {
  const land = (pointed: number, start = 0, marks: { count: number; label: string }[] = []) =>
    landingAt(section(marks), UNIT, start, pointed)

  it('is the nearest eight', () => {
    expect(land(43)).toEqual({ count: 40, words: 'eight 6' })
    expect(land(45)).toEqual({ count: 48, words: 'eight 7' })
  })

  it('is a phrase rather than the next eight, when it is near', () => {
    expect(land(37)).toEqual({ count: 32, words: 'phrase 2' })
    expect(land(38)).toEqual({ count: 40, words: 'eight 6' })
    expect(land(27)).toEqual({ count: 32, words: 'phrase 2' })
  })

  it('is a section mark rather than either, the nearer of two', () => {
    const marks = [
      { count: 35, label: 'break' },
      { count: 30, label: 'chorus' },
    ]
    expect(land(32, 0, marks)).toEqual({ count: 30, words: 'chorus' })
    expect(land(33, 0, marks)).toEqual({ count: 35, words: 'break' })
    expect(land(40, 0, marks)).toEqual({ count: 40, words: 'eight 6' })
  })

  it('is behind the start of the block, however far it is pulled back', () => {
    expect(land(-100, 32)).toEqual({ count: 40, words: 'eight 6' })
    expect(land(33, 32, [{ count: 32, label: 'drop' }])).toEqual({ count: 40, words: 'eight 6' })
    expect(land(20, 27)).toEqual({ count: 32, words: 'phrase 2' })
  })

  it('brings a block that begins beside the music back onto it', () => {
    expect(land(50, 43)).toEqual({ count: 48, words: 'eight 7' })
  })

  it('counts sixes in three', () => {
    expect(landingAt(section([]), { eight: 6, phrase: 24, name: 'six' }, 0, 41)).toEqual({ count: 42, words: 'six 8' })
  })
})
