import type { Ride } from '#plan/model.ts'
import { SAYS, saySaveFailed } from '#storage/messages.ts'
import type { RideStorage } from '#storage/openStorage.ts'
import type { AppStore } from '#store/state.ts'

/** Milliseconds of rest after a change before it is saved: browsers killed in the middle of writes that follow each other closely have lost them. */
export const PAUSE = 300
/** Milliseconds before another try after a save failed. */
const RETRY = 5000

/** The clock and the page's signs that it may be about to go. */
export interface SavingWorld {
  /** Runs something later; the result calls it off. */
  later: (run: () => void, milliseconds: number) => () => void
  /** Runs something whenever the page is hidden or left; the result ends it. */
  onLeaving: (run: () => void) => () => void
}

/**
 * Saves the open ride a moment after each change, at once when another one is opened or the
 * page is left, and tells the store how it went. Previews, received rides and demo rides that
 * nobody has changed are never saved.
 *
 * @returns ends the saving; what is waiting is saved first
 */
export function startSaving(
  store: AppStore,
  storage: Pick<RideStorage, 'save' | 'markOpened' | 'onSavedElsewhere'>,
  world: SavingWorld = browserWorld,
): () => void {
  let waiting: Ride | null = null
  let callOff = () => {}
  let underWay = 0

  const flush = () => {
    callOff()
    const ride = waiting
    waiting = null
    if (ride) void save(ride)
  }

  const saveAfter = (ride: Ride, milliseconds: number) => {
    waiting = ride
    callOff()
    callOff = world.later(flush, milliseconds)
  }

  async function save(ride: Ride): Promise<void> {
    underWay++
    try {
      const { updated, overOther } = await storage.save(ride).finally(() => underWay--)
      store.getState().noteSaved({ id: ride.id, title: ride.title, level: ride.level, slotMinutes: ride.slotMinutes, updated })
      if (overOther) warnOfOther()
      if (!waiting && underWay === 0) store.getState().setSaved('saved')
    } catch (error) {
      failed(ride, error)
    }
  }

  /** Says so once and tries again; a change or another ride in the meantime comes first. */
  function failed(ride: Ride, error: unknown): void {
    const { saved, setSaved, notify } = store.getState()
    if (saved !== 'failed')
      notify({ kind: 'problem', sentence: saySaveFailed(error), details: error instanceof Error ? [error.message] : [] })
    setSaved('failed')
    if (!waiting && store.getState().ride === ride) saveAfter(ride, RETRY)
  }

  const warnOfOther = () => store.getState().notify({ kind: 'warning', sentence: SAYS.otherWindow })

  const stopWatching = store.subscribe(({ ride, isDemo }, before) => {
    if (ride === before.ride && isDemo === before.isDemo) return
    if (ride?.id !== before.ride?.id) {
      flush()
      storage.markOpened(ride?.id ?? null).catch(() => undefined)
    }
    if (!ride || isDemo) return
    if (store.getState().saved !== 'failed') store.getState().setSaved('saving')
    saveAfter(ride, PAUSE)
  })
  const stopHearing = storage.onSavedElsewhere((id) => {
    if (store.getState().ride?.id === id) warnOfOther()
  })
  const stopLeaving = world.onLeaving(flush)

  return () => {
    flush()
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
