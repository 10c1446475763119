import type { AppStore } from '#store/state.ts'
import type { Notes } from './leavingNotes.ts'

const ASKED = 'ridewright.askedToKeep'

/**
 * Asks the browser once, when the first ride is kept, not to clear this site's data by itself, and
 * tells the store what it has promised. A browser that never answers has promised nothing.
 */
export function askForKeeping(
  store: AppStore,
  keeper: Pick<StorageManager, 'persist' | 'persisted'> | undefined,
  notes: Pick<Notes, 'getItem' | 'setItem'> | null,
): void {
  if (!keeper?.persist || !keeper.persisted) return
  const tell = (isPromised: boolean) => store.setState({ keeping: isPromised ? 'promised' : 'unpromised' })
  keeper.persisted().then(tell, () => undefined)
  let isAsked = wasAsked(notes)
  store.subscribe(({ saved, ride, isDemo, base }, before) => {
    if (isAsked || saved !== 'saved' || before.saved !== 'saving' || !ride || isDemo || ride !== base) return
    isAsked = true
    try {
      notes?.setItem(ASKED, 'yes')
    } catch {
      // Full or refused: it is asked again at the next start.
    }
    keeper.persist().then(tell, () => undefined)
  })
}

function wasAsked(notes: Pick<Notes, 'getItem'> | null): boolean {
  try {
    return notes?.getItem(ASKED) === 'yes'
  } catch {
    return false
  }
}
