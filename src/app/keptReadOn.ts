import { profileOfBike, readProfile, writeProfile } from '#plan/kept/profile.ts'
import type { AppStore } from '#store/state.ts'

const NAME = 'ridewright.readOn'

/** Reads rides on the bike they were read on at the last visit, and notes which one that is. Without storage it is forgotten, which costs one choice. */
export function keepReadOn(store: AppStore, storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> | null): void {
  const kept = readProfile(attempt(() => storage?.getItem(NAME)) ?? '')
  if (kept?.kind === 'bike') store.getState().showOn(kept.bike)
  store.subscribe(({ readOn }, before) => {
    if (readOn === before.readOn) return
    attempt(() => (readOn ? storage?.setItem(NAME, writeProfile(profileOfBike(readOn))) : storage?.removeItem(NAME)))
  })
}

/** Storage may be full or refused. */
function attempt<T>(act: () => T): T | undefined {
  try {
    return act()
  } catch {
    return undefined
  }
}
