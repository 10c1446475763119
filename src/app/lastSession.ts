import type { Place } from '#store/placeSlice.ts'
import type { AppStore } from '#store/state.ts'
import type { Theme, ViewWindow } from '#store/viewSlice.ts'
import { PLACES } from './fragment.ts'
import type { NotePad } from './journal.ts'
import { PAUSE, type SavingWorld } from './saving.ts'

/** Where the page was left, apart from the ride itself. Small and dispensable, so it lives in localStorage. */
export interface Session {
  place: Place
  view: ViewWindow | null
  theme: Theme
}

const NAME = 'ridewright.session'
const THEMES: readonly Theme[] = ['auto', 'light', 'dark']
const FRESH: Session = { place: 'start', view: null, theme: 'auto' }

/** What the second copy is called, which a killed browser keeps: localStorage may lag behind. */
export const SESSION_NOTE = 'session'

/**
 * The session as it was left; each part that is missing or makes no sense is as on a first visit.
 *
 * @param second the second copy; the newer of the two counts
 */
export function readSession(storage: Pick<Storage, 'getItem'> | null, second: string | null = null): Session {
  const copies = [textIn(storage), second].map(objectIn)
  const kept = copies.sort((a, b) => Number(b.at ?? 0) - Number(a.at ?? 0))[0]!
  const { place, view, theme } = kept
  return {
    place: PLACES.find((known) => known === place) ?? FRESH.place,
    view: isWindow(view) ? { fromSeconds: view.fromSeconds, toSeconds: view.toSeconds } : null,
    theme: THEMES.find((known) => known === theme) ?? FRESH.theme,
  }
}

/** Notes the session a moment after it changes, and when the page is left. Without storage it is forgotten, which costs one press at the next visit. */
export function keepSession(
  store: AppStore,
  storage: Pick<Storage, 'setItem'> | null,
  world: SavingWorld,
  pad: NotePad | null = null,
  now: () => number = Date.now,
): void {
  let callOff = () => {}
  const write = () => {
    callOff()
    const { place, view, theme, received } = store.getState()
    // What is looked at of a shared ride is not where one's own was left.
    if (received) return
    const text = JSON.stringify({ at: now(), place, view, theme } satisfies Session & { at: number })
    pad?.noteDown(SESSION_NOTE, text).catch(() => undefined)
    try {
      storage?.setItem(NAME, text)
    } catch {
      // Full or refused.
    }
  }
  store.subscribe((state, before) => {
    if (state.place === before.place && state.view === before.view && state.theme === before.theme) return
    callOff()
    callOff = world.later(write, PAUSE)
  })
  world.onLeaving(write)
}

function textIn(storage: Pick<Storage, 'getItem'> | null): string | null {
  try {
    return storage?.getItem(NAME) ?? null
  } catch {
    return null
  }
}

function objectIn(text: string | null): Record<string, unknown> {
  try {
    return Object(JSON.parse(text ?? 'null')) as Record<string, unknown>
  } catch {
    return {}
  }
}

function isWindow(value: unknown): value is ViewWindow {
  if (typeof value !== 'object' || value === null) return false
  const { fromSeconds, toSeconds } = value as Record<string, unknown>
  return Number.isFinite(fromSeconds) && Number.isFinite(toSeconds)
}
