import { expect, it } from 'vitest'
import { formatBytes } from '#units/formatBytes.ts'

it.each([
  [1, '1 kB'],
  [640_000, '640 kB'],
  [999_000, '999 kB'],
  [999_001, '1 MB'],
  [8_240_000, '8.2 MB'],
  [41_600_000, '42 MB'],
])('%d bytes are %s', (bytes, text) => {
  expect(formatBytes(bytes)).toBe(text)
})
