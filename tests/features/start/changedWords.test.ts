import { describe, expect, it } from 'vitest'
import { changedWords } from '#features/start/changedWords.ts'

const NOW = Date.UTC(2026, 4, 20, 12)
const SECOND = 1000
const HOUR = 3600 * SECOND
const DAY = 24 * HOUR

describe('changedWords', () => {
  it.each([
    [0, 'just now'],
    [59 * SECOND, 'just now'],
    [60 * SECOND, '1 minute ago'],
    [HOUR - 1, '59 minutes ago'],
    [HOUR, '1 hour ago'],
    [DAY - 1, '23 hours ago'],
    [DAY, 'yesterday'],
    [2 * DAY, '2 days ago'],
    [7 * DAY - 1, '6 days ago'],
    [10 * DAY, 'May 10, 2026'],
  ])('says an age of %i ms as %s', (age, words) => {
    expect(changedWords(NOW - age, NOW)).toBe(words)
  })

  it('takes an instant in the future for now, since clocks are set back', () => {
    expect(changedWords(NOW + DAY, NOW)).toBe('just now')
  })
})
