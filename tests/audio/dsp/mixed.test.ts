import { expect, it } from 'vitest'
import { mixed } from '#audio/dsp/mixed.ts'

it('channels are mixed in equal parts, and one alone is left as it is', () => {
  expect([...mixed([Float32Array.of(1, 0, -1), Float32Array.of(0, 0.5, -1)])]).toEqual([0.5, 0.25, -1])
  const only = Float32Array.of(0.5)
  expect(mixed([only])).toBe(only)
  expect(mixed([])).toHaveLength(0)
})
