import { standsAlone } from '#store/placeSlice.ts'
import type { AppStore } from '#store/state.ts'
import { followAddress } from './addressSync.ts'
import { readFragment } from './fragment.ts'
import type { Session } from './lastSession.ts'

/**
 * Brings back what the page address asks for: a shared ride, a ride of one's own, or, when it
 * names none, the ride, place and view that were left.
 *
 * @param lastOpened the id of the ride left open; a shared ride leaves it alone
 */
export async function reopen(store: AppStore, hash: string, session: Session, lastOpened: () => Promise<string | null>): Promise<void> {
  const state = store.getState()
  state.setTheme(session.theme)
  const fragment = readFragment(hash)
  if (fragment.kind === 'link') return followAddress(hash, store)

  const last = await lastOpened().catch(() => null)
  const rideId = (fragment.kind === 'place' && fragment.rideId) || last
  const opened = rideId !== null && (await state.openSaved(rideId))
  if (!opened) return state.setPlace(fragment.kind === 'place' && standsAlone(fragment.place) ? fragment.place : 'start')
  state.setPlace(fragment.kind === 'place' ? fragment.place : session.place)
  if (rideId === last) state.setView(session.view)
}
