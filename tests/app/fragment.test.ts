import { describe, expect, it } from 'vitest'
import { linkAddress, PLACES, placeFragment, readFragment } from '#app/fragment.ts'

describe('readFragment', () => {
  it('reads what placeFragment writes', () => {
    for (const place of PLACES) {
      expect(readFragment(placeFragment(place))).toEqual({ kind: 'place', place })
      expect(readFragment(placeFragment(place, 'a1_b-2'))).toEqual({ kind: 'place', place, rideId: 'a1_b-2' })
    }
  })

  it('finds nothing in an empty fragment or an unknown place', () => {
    expect(readFragment('')).toEqual({ kind: 'none' })
    expect(readFragment('#')).toEqual({ kind: 'none' })
    expect(readFragment('#/nowhere')).toEqual({ kind: 'none' })
  })

  it('takes all else for a shared ride, damaged beginnings too', () => {
    expect(readFragment('#ride=1abc')).toEqual({ kind: 'link', text: '1abc' })
    expect(readFragment('#ride=')).toEqual({ kind: 'link', text: '' })
    expect(readFragment('#rde=1abc')).toEqual({ kind: 'link', text: 'rde=1abc' })
    expect(readFragment('#/draft/<script>')).toEqual({ kind: 'link', text: '/draft/<script>' })
  })
})

describe('linkAddress', () => {
  it('keeps the page and replaces what stood behind it', () => {
    expect(linkAddress('https://example.org/a/?x=1#/handover/r1', 'TEXT')).toBe('https://example.org/a/?x=1#ride=TEXT')
    expect(linkAddress('https://example.org/', 'TEXT')).toBe('https://example.org/#ride=TEXT')
  })
})
