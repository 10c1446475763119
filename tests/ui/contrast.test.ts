import { describe, expect, it } from 'vitest'
import { contrast, inGamut } from '#tests/support/contrast.ts'
import { COLOUR_TOKENS, type Theme, token } from '#tests/support/palette.ts'
import { EFFORT_LEVELS, effortColour, effortPair } from '#ui/effort.ts'

/** WCAG 2.2: 1.4.3 (AA) and 1.4.6 (AAA) for text, 1.4.11 for what is not text. */
const AA = 4.5
const AAA = 7
const NON_TEXT = 3

const levels = Array.from({ length: EFFORT_LEVELS + 1 }, (_, level) => level)
const lightness = (name: string, theme: Theme) => Number(/oklch\(([\d.]+)%/.exec(token(name, theme))![1])

describe.each(['light', 'dark'] as const)('%s palette', (theme) => {
  it.each(COLOUR_TOKENS)('--%s can be shown on any screen', (name) => {
    expect(inGamut(token(name, theme))).toBe(true)
  })

  it.each([
    ['ink', 'paper', AAA],
    ['ink', 'sheet', AAA],
    ['quiet', 'paper', AAA],
    ['quiet', 'sheet', AAA],
    ['action', 'paper', AAA],
    ['action', 'sheet', AAA],
    ['on-action', 'action', AAA],
    ['paper', 'ink', AAA],
    ['effort-10', 'paper', NON_TEXT],
    ['action', 'effort-0', NON_TEXT],
  ])('--%s on --%s reaches %d:1', (front, back, least) => {
    expect(contrast(token(front, theme), token(back, theme))).toBeGreaterThanOrEqual(least)
  })

  it.each(levels)('text on effort %d reaches 4.5:1', (level) => {
    expect(contrast(token(`effort-text-${level}`, theme), token(`effort-${level}`, theme))).toBeGreaterThanOrEqual(AA)
  })

  it('effort goes one way in lightness, in one hue', () => {
    const steps = levels.slice(1).map((level) => lightness(`effort-${level}`, theme) - lightness(`effort-${level - 1}`, theme))
    expect(steps.every((step) => (theme === 'light' ? step < 0 : step > 0))).toBe(true)
    expect(levels.map((level) => token(`effort-${level}`, theme)).every((colour) => colour.endsWith(' 350)'))).toBe(true)
  })
})

describe('colour of an effort', () => {
  it('is the token at whole levels, held at the ends', () => {
    expect(effortColour(7)).toBe('var(--effort-7)')
    expect(effortColour(-1)).toBe('var(--effort-0)')
    expect(effortColour(12)).toBe('var(--effort-10)')
    expect(effortColour(6.999)).toBe('var(--effort-7)')
  })

  it('is mixed between two levels', () => {
    expect(effortColour(7.25)).toBe('color-mix(in oklch, var(--effort-7), var(--effort-8) 25%)')
  })

  it('carries text on whole levels only', () => {
    expect(effortPair(6.5)).toEqual({ background: 'var(--effort-7)', color: 'var(--effort-text-7)' })
  })
})
