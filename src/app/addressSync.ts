import { rideInText } from '#plan/link/rideInText.ts'
import { standsAlone } from '#store/placeSlice.ts'
import type { AppState, AppStore } from '#store/state.ts'
import { tell, words } from '#words/words.ts'
import { placeFragment, readFragment } from './fragment.ts'

/** The part of a window that page addresses need. */
type AddressBar = Pick<Window, 'location' | 'history' | 'addEventListener' | 'removeEventListener'>

/**
 * Follows the page address: a place is gone to, a ride is opened, a link is shown read-only.
 * A link that cannot be opened is said in a notice and changes nothing else; with no ride open
 * the notice stands on the start page.
 */
export async function followAddress(hash: string, store: AppStore): Promise<void> {
  const state = store.getState()
  const fragment = readFragment(hash)
  if (fragment.kind === 'link') return openLink(fragment.text, store)
  if (fragment.kind === 'none') return
  if (state.received) state.dismissReceived()
  const { place, rideId } = fragment
  if (rideId !== undefined && place !== 'start' && store.getState().ride?.id !== rideId) {
    const opened = await state.openSaved(rideId)
    if (!opened) return store.getState().setPlace(standsAlone(place) ? place : 'start')
  }
  store.getState().setPlace(standsAlone(place) || store.getState().ride ? place : 'start')
}

/** Shows the ride of a link in any text read-only, as its address would. */
export function openLink(text: string, store: AppStore): void {
  const { receiveRide, notify, announce, dismissNotice, dismissReceived } = store.getState()
  const read = rideInText(text)
  if (read.ok) {
    dismissNotice()
    receiveRide(read.ride, 'draft', `#${read.link}`)
    announce(words.links.opened({ title: read.ride.title || words.names.untitled }))
    if (read.others > 0) notify({ kind: 'info', sentence: words.links.otherLinks({ others: read.others }) })
    return
  }
  dismissReceived()
  const [first, ...others] = read.problems.map((problem) => tell(problem.text))
  notify(
    others.length === 0
      ? { kind: 'problem', sentence: words.links.refused({ why: first! }) }
      : {
          kind: 'problem',
          sentence: words.links.refusedRide,
          details: [first!, ...others],
        },
  )
}

/** The fragment of what is shown: its place, or the link of a received ride; null while one is that came without a link, then the address stays. */
const fragmentOf = (state: AppState): string | null =>
  state.received ? state.received.fragment : placeFragment(state.place, state.place === 'start' ? undefined : state.ride?.id)

/**
 * Keeps the page address and the store in step, both ways, so that reload, back, forward and
 * bookmarks work. The first address is replaced, later ones are added to the history.
 *
 * @returns undoes the tie
 */
export function tieAddress(store: AppStore, bar: AddressBar): () => void {
  const show = (state: AppState, how: 'pushState' | 'replaceState') => {
    const fragment = fragmentOf(state)
    if (fragment !== null && fragment !== bar.location.hash) bar.history[how](null, '', fragment)
  }
  // While an address is being followed, the states on the way to it are none to go back to.
  let following = 0
  const followHash = async () => {
    following++
    await followAddress(bar.location.hash, store).finally(() => following--)
    show(store.getState(), 'replaceState')
  }
  show(store.getState(), 'replaceState')
  // The browser changes the address before it says so: what else changes in between must not write the old place over it.
  const untie = store.subscribe((state, before) => {
    if (following === 0 && fragmentOf(state) !== fragmentOf(before)) show(state, 'pushState')
  })
  bar.addEventListener('hashchange', followHash)
  return () => {
    untie()
    bar.removeEventListener('hashchange', followHash)
  }
}
