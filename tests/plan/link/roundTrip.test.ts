import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decodeLink } from '#plan/link/decodeLink.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { shareable } from '#plan/link/shareable.ts'
import { parseRide } from '#plan/parseRide.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'

describe('a link', () => {
  it('gives back everything that may be shared, of any ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        expect(decodeLink(encodeLink(ride))).toStrictEqual({ ok: true, ride: shareable(ride) })
      }),
      { numRuns: 300 },
    )
  })

  it('is the same text for the same ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const opened = decodeLink(encodeLink(ride))
        expect(opened.ok && encodeLink(opened.ride)).toBe(encodeLink(ride))
      }),
      { numRuns: 50 },
    )
  })
})

describe('parsing', () => {
  it('leaves a ride as it is, however often', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        expect(parseRide(ride)).toStrictEqual({ ok: true, ride })
      }),
      { numRuns: 300 },
    )
  })
})
