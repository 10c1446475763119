import { describe, expect, it } from 'vitest'
import { PLACES, placeFragment, readFragment } from '#app/fragment.ts'

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
    expect(readFragment('#r1.abc')).toEqual({ kind: 'link', text: '#r1.abc' })
    expect(readFragment('#1.abc')).toEqual({ kind: 'link', text: '#1.abc' })
    expect(readFragment('#/draft/<script>')).toEqual({ kind: 'link', text: '#/draft/<script>' })
  })
})
