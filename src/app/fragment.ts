/** The places a page address can name. */
export const PLACES = ['start', 'draft', 'sheet', 'handover'] as const
export type Place = (typeof PLACES)[number]

/** What stands after the "#" of the page address. */
export type Fragment = { kind: 'none' } | { kind: 'place'; place: Place; rideId?: string } | { kind: 'link'; text: string }

const LINK = '#ride='

/**
 * Reads the fragment of the page address. `#/sheet/abc` is a place and the ride it shows;
 * everything else that is not empty is taken for a shared ride, also where its beginning was
 * damaged on the way, so that the receiver gets a sentence and not a start page without one.
 */
export function readFragment(hash: string): Fragment {
  if (hash === '' || hash === '#') return { kind: 'none' }
  const [, name, rideId] = /^#\/([a-z]*)(?:\/([\w-]+))?\/?$/.exec(hash) ?? []
  if (name !== undefined) {
    const place = PLACES.find((known) => known === name)
    return place ? { kind: 'place', place, ...(rideId && { rideId }) } : { kind: 'none' }
  }
  return { kind: 'link', text: hash.startsWith(LINK) ? hash.slice(LINK.length) : hash.slice(1) }
}

/** The fragment of a place, for addresses that can be kept and opened again. */
export const placeFragment = (place: Place, rideId?: string): string => (rideId === undefined ? `#/${place}` : `#/${place}/${rideId}`)

/** The address that opens a ride elsewhere: this page's own address with the ride in its fragment, which browsers send to no server. */
export const linkAddress = (page: string, text: string): string => page.replace(/#.*$/s, '') + LINK + text
