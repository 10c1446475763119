import { rideInText } from '#plan/link/rideInText.ts'
import type { Place } from '#store/placeSlice.ts'

/** The places a page address can name. */
export const PLACES = ['start', 'draft', 'sheet', 'lead', 'handover', 'setup', 'log', 'songs'] as const satisfies readonly Place[]

/** What stands after the "#" of the page address. */
type Fragment = { kind: 'none' } | { kind: 'place'; place: Place; rideId?: string } | { kind: 'link'; text: string }

/**
 * Reads the fragment of the page address. `#/sheet/abc` is a place and the ride it shows;
 * everything else that is not empty is taken for a shared ride, also where its beginning was
 * damaged on the way, so that the receiver gets a sentence and not a start page without one.
 * What programs put behind a place to see where people come from is left aside.
 */
export function readFragment(hash: string): Fragment {
  if (hash === '' || hash === '#') return { kind: 'none' }
  const [, name, rideId] = /^#\/([a-z]*)(?:\/([\w.:-]+))?\/?(?:[?&].*)?$/.exec(hash) ?? []
  if (name === undefined) return { kind: 'link', text: hash }
  const place = PLACES.find((known) => known === name)
  if (!place) return { kind: 'none' }
  return rideId === undefined ? { kind: 'place', place } : { kind: 'place', place, rideId }
}

/** The fragment of a place, for addresses that can be kept and opened again. */
export const placeFragment = (place: Place, rideId?: string): string => (rideId === undefined ? `#/${place}` : `#/${place}/${rideId}`)

/**
 * The fragment of an address, or, where a program wrote its # as %23 so that it has none, the link that
 * then stands in its path or its query.
 */
export function fragmentOfAddress({ hash, pathname, search }: Pick<Location, 'hash' | 'pathname' | 'search'>): string {
  if (hash.length > 1) return hash
  const read = rideInText(pathname + search)
  return read.ok || read.fault !== 'notOurs' ? pathname + search : hash
}
