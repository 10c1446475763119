import { expect, test } from 'vitest'
import { wallClockAfter } from '#units/wallClockAfter.ts'

test.each([
  ['18:30', 1260, '18:51'],
  ['18:30', 29, '18:30'],
  ['18:30', 30, '18:31'],
  ['23:50', 900, '00:05'],
  ['00:10', -1200, '23:50'],
])('%s and %d s is %s', (clock, seconds, later) => expect(wallClockAfter(clock, seconds)).toBe(later))
