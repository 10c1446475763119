import type { Ride } from '#plan/model.ts'
import { SAYS, saySaveFailed } from '#storage/messages.ts'
import { COPIES, type RideStorage, type SaveOutcome } from '#storage/openStorage.ts'
import type { AppState, AppStore } from '#store/state.ts'
import { tell, words } from '#words/words.ts'

/** Milliseconds of rest after a change before it is saved: writing at every key would only hold up the next. */
export const PAUSE = 200
/** Milliseconds that a change waits at most, however busily others follow it. */
const LONGEST = 500
/** Milliseconds before another try after a save failed, or the second copy did. */
const RETRY = 5000
/** Milliseconds between two looks at whether what was saved is still there. */
const LOOK = 2000

/** The clock and the page's signs that it may be about to go. */
export interface SavingWorld {
  /** Runs something later; the result calls it off. */
  later: (run: () => void, milliseconds: number) => () => void
  /** Runs something whenever the page is hidden or left; the result ends it. */
  onLeaving: (run: () => void) => () => void
}

type Storage = Pick<RideStorage, 'save' | 'countCopies' | 'markOpened' | 'onSavedElsewhere'>

/**
 * Saves the open ride a moment after each change, at once when another one is opened or the
 * page is left, and tells the store how it went. What another window saved comes in with it,
 * and when that window says so. Now and then it looks whether what was saved is still there.
 * Previews, received rides and demo rides that nobody has changed are never saved.
 *
 * @returns ends the saving; what is waiting is saved first
 */
export function startSaving(store: AppStore, storage: Storage, world: SavingWorld = browserWorld): () => void {
  let isWaiting = false
  let callOffPause = () => {}
  let callOffLongest: (() => void) | null = null
  let callOffLook = () => {}
  let underWay = 0
  let isDue = false
  let isOver = false

  /** Saves what is open, or was until now; always as it stands at that moment, since what another window saved may have come in. */
  const flush = ({ ride, base }: Pick<AppState, 'ride' | 'base'> = store.getState()) => {
    callOffPause()
    callOffLongest?.()
    callOffLongest = null
    isDue = false
    const isToSave = isWaiting
    isWaiting = false
    if (ride && isToSave) void save(ride, base)
  }

  /** One save at a time: a change during one waits for its end, since what comes of it is what the next is made from. */
  const flushInTurn = () => {
    if (underWay === 0) flush()
    else isDue = true
  }

  const saveAfter = (milliseconds: number) => {
    isWaiting = true
    callOffPause()
    callOffPause = world.later(flushInTurn, milliseconds)
    callOffLongest ??= world.later(flushInTurn, Math.max(milliseconds, LONGEST))
  }

  async function save(ride: Ride, base: Ride | null): Promise<void> {
    underWay++
    try {
      took(ride, await storage.save(ride, base ?? undefined).finally(() => underWay--))
    } catch (error) {
      failed(ride, error)
    }
    if (isDue && underWay === 0) flush()
  }

  function took(ride: Ride, outcome: SaveOutcome): void {
    const { ride: open, notify, noteSaved, setSaved, setOneCopy, follow, offerWindows } = store.getState()
    if (outcome.deleted) {
      deleted(ride)
      return
    }
    const { stored, merged, updated, copies, wasCleared } = outcome
    noteSaved({ id: ride.id, title: stored.title, level: stored.level, slotMinutes: stored.slotMinutes, updated })
    if (wasCleared) notify({ kind: 'warning', sentence: tell(SAYS.cleared) })
    follow(ride, stored)
    if (!isWaiting && underWay === 0) setSaved('saved')
    if (open?.id !== ride.id) return
    if (merged && merged.merge.conflicts.length > 0) offerWindows(merged.base, ride, merged.theirs)
    setOneCopy(copies < COPIES)
    lookAfter(copies < COPIES ? RETRY : LOOK)
  }

  function deleted(ride: Ride): void {
    const { ride: open, setSaved, notify } = store.getState()
    if (open?.id !== ride.id) return
    isWaiting = false
    callOffLook()
    setSaved('deleted')
    notify({ kind: 'problem', sentence: tell(SAYS.deletedElsewhere), offer: { label: words.app.keepDeleted, keep: true } })
  }

  /** Says so once and tries again; a change or another ride in the meantime comes first. */
  function failed(ride: Ride, error: unknown): void {
    const { saved, setSaved, notify } = store.getState()
    if (saved !== 'failed')
      notify({
        kind: 'problem',
        sentence: tell(saySaveFailed(error)),
        details: error instanceof Error && error.message !== '' ? [error.message] : [],
      })
    setSaved('failed')
    if (!isWaiting && store.getState().ride === ride) saveAfter(RETRY)
  }

  /** Brings this window and storage together now: what is newer there comes here, what is missing there is written. */
  const together = () => {
    const { ride, isDemo, saved } = store.getState()
    if (!ride || isDemo || saved === 'deleted') return
    isWaiting = true
    flushInTurn()
  }

  const lookAfter = (milliseconds: number) => {
    callOffLook()
    if (!isOver) callOffLook = world.later(() => void look(), milliseconds)
  }

  async function look(): Promise<void> {
    const { ride, isDemo, saved, oneCopy } = store.getState()
    if (!ride || isDemo || saved === 'deleted') return
    const copies = saved === 'saved' ? await storage.countCopies(ride.id).catch(() => 0) : COPIES
    const { ride: now, saved: still } = store.getState()
    if (now !== ride || still !== 'saved') return lookAfter(LOOK)
    if (copies === COPIES && !oneCopy) return lookAfter(LOOK)
    if (copies === 0) store.getState().setSaved('saving')
    together()
  }

  const stopWatching = store.subscribe(({ ride, isDemo, base, saved }, before) => {
    const isKeptAgain = before.saved === 'deleted' && saved === 'saving'
    if (ride === before.ride && isDemo === before.isDemo && !isKeptAgain) return
    if (ride?.id !== before.ride?.id) {
      flush(before)
      callOffLook()
      if (saved === 'deleted') store.getState().setSaved('saved')
      storage.markOpened(ride?.id ?? null).catch(() => undefined)
    }
    if (!ride || isDemo || store.getState().saved === 'deleted') return
    // What came in from storage is there already.
    if (ride === base && base !== before.base && ride.id === before.ride?.id) return
    if (store.getState().saved !== 'failed') store.getState().setSaved('saving')
    saveAfter(PAUSE)
  })
  const stopHearing = storage.onSavedElsewhere((id) => {
    const { ride, place, refreshSavedRides } = store.getState()
    if (ride?.id === id) together()
    if (place === 'start') void refreshSavedRides()
  })
  const stopLeaving = world.onLeaving(() => flush())

  return () => {
    isOver = true
    flush()
    callOffLook()
    stopWatching()
    stopHearing()
    stopLeaving()
  }
}

/** The browser's own timer and signs. */
export const browserWorld: SavingWorld = {
  later: (run, milliseconds) => {
    const timer = setTimeout(run, milliseconds)
    return () => clearTimeout(timer)
  },
  onLeaving: (run) => {
    const whenHidden = () => {
      if (document.visibilityState === 'hidden') run()
    }
    document.addEventListener('visibilitychange', whenHidden)
    window.addEventListener('pagehide', run)
    return () => {
      document.removeEventListener('visibilitychange', whenHidden)
      window.removeEventListener('pagehide', run)
    }
  },
}
