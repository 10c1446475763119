import { describe, expect, it } from 'vitest'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'

describe('formatClock', () => {
  it.each([
    [0, '0:00'],
    [379.2, '6:19'],
    [22.33, '0:22'],
    [59.5, '1:00'],
    [3599.6, '1:00:00'],
    [3725, '1:02:05'],
    [-12, '−0:12'],
    [-0.4, '0:00'],
    [-77.5, '−1:18'],
  ])('writes %d s as %s', (seconds, text) => {
    expect(formatClock(seconds)).toBe(text)
  })

  it('rounds half up, and drift below the half with it', () => {
    expect(formatClock(22.5)).toBe('0:23')
    expect(formatClock(22.499999999)).toBe('0:23')
    expect(formatClock(22.49)).toBe('0:22')
  })
})

describe('formatDuration', () => {
  it.each([
    [24.3, '24 s'],
    [5, '5 s'],
    [0, '0 s'],
    [59.5, '1:00'],
    [231, '3:51'],
    [-24, '−24 s'],
  ])('says %d s as %s', (seconds, text) => {
    expect(formatDuration(seconds)).toBe(text)
  })
})
