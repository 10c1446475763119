import fc from 'fast-check'
import { expect, it } from 'vitest'
import { fromBase64url, toBase64url } from '#plan/link/base64url.ts'

it('leads back to the bytes, in letters an address carries', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
      expect(toBase64url(bytes)).toMatch(/^[A-Za-z0-9_-]*$/)
      expect(fromBase64url(toBase64url(bytes))).toEqual(bytes)
    }),
  )
})

it.each([
  ['another letter', 'AA+A'],
  ['padding', 'AA=='],
  ['a lone letter', 'AAAAA'],
  ['spare bits that are not zero', 'AB'],
  ['a letter beyond the alphabet', 'AAé'],
])('is refused with %s', (_, text) => {
  expect(fromBase64url(text)).toBeUndefined()
})
