import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseRide } from '#plan/document/parseRide.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { shareable } from '#plan/link/shareable.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'

const demo = (name: string): Ride => JSON.parse(readFileSync(`public/demo/${name}.ride.json`, 'utf8'))

describe('a link', () => {
  it('gives back everything that may be shared, of any ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        expect(decodeLink(encodeLink(ride))).toStrictEqual({ ok: true, ride: shareable(ride) })
      }),
      { numRuns: 200 },
    )
  })

  it('gives back the room, the location, and the language of any ride, each without the others too', () => {
    fc.assert(
      fc.property(
        arbitraryRide({ sections: 1 }),
        fc.constantFrom(undefined, 'studio' as const, 'online' as const),
        fc.option(fc.oneof(fc.string({ unit: 'grapheme', maxLength: 40 }), fc.constantFrom('Studio B, Quay Street 7', 'استوديو ٢', '')), {
          nil: undefined,
        }),
        fc.constantFrom(undefined, 'en' as const, 'de' as const),
        (ride, room, location, language) => {
          const made = { ...ride, room, location, language }
          expect(decodeLink(encodeLink(made))).toStrictEqual({ ok: true, ride: shareable(made) })
        },
      ),
    )
  })

  it('gives back how the brake of any bike was fitted and its watts found, each without the other and without feel anchors too', () => {
    const rounded = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(
      fc.property(
        arbitraryRide({ sections: 1 }),
        fc.option(fc.record({ exponent: rounded(1, 2), error: rounded(0, 1) }), { nil: undefined }),
        fc.constantFrom(undefined, 'watts' as const, 'feel' as const),
        fc.integer({ min: 60, max: 100 }),
        (ride, brakeFit, calibration, referenceRpm) => {
          const made = { ...ride, bike: { ...ride.bike, brakeFit, calibration, referenceRpm } }
          expect(decodeLink(encodeLink(made))).toStrictEqual({ ok: true, ride: shareable(made) })
        },
      ),
    )
  })

  it('is the same text for equal rides, whatever the order of their keys', () => {
    const backwards = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(backwards)
      if (typeof value !== 'object' || value === null) return value
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, held]) => [key, backwards(held)]),
      )
    }
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        expect(encodeLink(backwards(ride) as Ride)).toBe(encodeLink(ride))
      }),
      { numRuns: 50 },
    )
  })

  it('holds nothing of the private notes, the findings put aside, the shaky blocks and the named riders', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const { privateNotes: _notes, setAside: _aside, shaky: _shaky, riders: _riders, ...rest } = ride
        expect(encodeLink({ ...ride, privateNotes: 'Knee of the woman in row two', setAside: ['water:ride'], shaky: ['b1'] })).toBe(
          encodeLink(rest),
        )
        expect(shareable(ride)).not.toHaveProperty('privateNotes')
        expect(shareable(ride)).not.toHaveProperty('setAside')
        expect(shareable(ride)).not.toHaveProperty('shaky')
        expect(shareable(ride)).not.toHaveProperty('riders')
      }),
      { numRuns: 50 },
    )
  })

  it('is short: a 45-minute class with every cue under 1,500 characters', () => {
    expect(encodeLink(demo('ridge-and-return')).length).toBeLessThanOrEqual(1_500)
    expect(encodeLink(demo('twenty-minute-spark')).length).toBeLessThanOrEqual(1_200)
  })

  it('is made of characters that no mail program breaks', () => {
    expect(encodeLink(demo('ridge-and-return'))).toMatch(/^r1\.[A-Za-z0-9_-]+$/)
  })

  it('carries a ride as commands leave it: undefined properties, −0', () => {
    const ride = { ...demo('twenty-minute-spark'), aim: undefined, briefingSeconds: -0 }
    const opened = decodeLink(encodeLink(ride))
    expect(opened).toStrictEqual({ ok: true, ride: shareable(ride) })
    expect(opened.ok && Object.is(opened.ride.briefingSeconds, 0)).toBe(true)
  })

  it('carries the longest texts and the widest numbers there may be', () => {
    const ride = demo('twenty-minute-spark')
    const block = ride.sections[0]!.blocks[0]!
    const wide: Ride = {
      ...ride,
      title: '夜🚲'.repeat(100),
      sections: [
        {
          ...ride.sections[0]!,
          notes: `${'half turn on. '.repeat(700)}\u0000\u001f\u007f\u2028`,
          blocks: [
            {
              ...block,
              notes: 'q'.repeat(10_000),
              effort: { from: Math.PI, to: Number.MIN_VALUE },
              length: { counts: 100_000 },
            } as typeof block,
          ],
        },
      ],
      houseRules: { tiny: 5e-324, third: 1 / 3, large: -123_456_789.000_000_1 },
    }
    expect(parseRide(wide)).toStrictEqual({ ok: true, ride: wide })
    expect(decodeLink(encodeLink(wide))).toStrictEqual({ ok: true, ride: wide })
  })
})
