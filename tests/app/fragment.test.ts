import { describe, expect, it } from 'vitest'
import { fragmentOfAddress, PLACES, placeFragment, readFragment } from '#app/fragment.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { smallRide } from '#tests/support/smallRide.ts'

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

  it('leaves aside what programs put behind a place', () => {
    expect(readFragment('#/sheet/a1?fbclid=x&y=/z')).toEqual({ kind: 'place', place: 'sheet', rideId: 'a1' })
    expect(readFragment('#/songs&utm_source=mail')).toEqual({ kind: 'place', place: 'songs' })
  })

  it('takes all else for a shared ride, damaged beginnings too', () => {
    expect(readFragment('#r1.abc')).toEqual({ kind: 'link', text: '#r1.abc' })
    expect(readFragment('#1.abc')).toEqual({ kind: 'link', text: '#1.abc' })
    expect(readFragment('#/draft/<script>')).toEqual({ kind: 'link', text: '#/draft/<script>' })
  })
})

describe('fragmentOfAddress', () => {
  const link = encodeLink(smallRide())

  it('is the fragment, whatever stands before it', () => {
    for (const search of ['', '?fbclid=x', `?u=%23${link}`]) {
      expect(fragmentOfAddress({ hash: '#/log', pathname: '/', search })).toBe('#/log')
    }
    expect(fragmentOfAddress({ hash: '', pathname: '/app/', search: '?fbclid=IwAR0' })).toBe('')
  })

  it('is the link whose # a program wrote as %23, whole or not', () => {
    for (const sent of [link, link.slice(0, 80)]) {
      expect(fragmentOfAddress({ hash: '', pathname: `/app/%23${sent}`, search: '' })).toContain(sent)
      expect(fragmentOfAddress({ hash: '#', pathname: '/', search: `?utm_source=x%2523${sent}` })).toContain(sent)
    }
  })
})
