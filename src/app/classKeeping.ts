import { parseLog } from '#engine/leading/parseLog.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { type KeptClass, keptOf } from '#store/leadSlice.ts'
import type { AppStore } from '#store/state.ts'
import type { Notes } from './leavingNotes.ts'

/** Where the second copy of a class under way is: one that a killed browser keeps. */
interface ClassShelf {
  keepClass: (text: string) => Promise<void>
  keptClass: () => Promise<string | null>
}

/** What was left of classes. */
interface LeftClass {
  /** The one that was under way. */
  kept: KeptClass | null
  /** Whether it was on the screen. */
  onScreen: boolean
  /** The one that was ended last and is not in the log yet. */
  last: KeptClass | null
}

const NAME = 'ridewright.class'

/**
 * Keeps the class being led at every press, and the one that was ended and waits for the log: at
 * once in localStorage, from which a reload reads it, and in the database, because localStorage may
 * lag behind when a browser is killed.
 *
 * @param now milliseconds since 1970; tells the newer of the two copies
 */
export function keepClass(store: AppStore, notes: Pick<Notes, 'setItem'> | null, shelf: ClassShelf | null, now: () => number): void {
  store.subscribe(({ leading, lastLed, place, ledElsewhere }, before) => {
    // The window that leads it keeps it.
    if (ledElsewhere || before.ledElsewhere) return
    const same = leading === before.leading && lastLed === before.lastLed
    if (same && (place === before.place || !leading)) return
    const text = JSON.stringify({ at: now(), onScreen: place === 'lead', class: keptOf(leading), last: keptOf(lastLed) })
    try {
      notes?.setItem(NAME, text)
    } catch {
      // Full or refused: the other copy stands.
    }
    shelf?.keepClass(text).catch(() => undefined)
  })
}

/** The classes there were when the page was left, from the newer of the two copies; null where there is none that makes sense. */
export async function readClass(notes: Pick<Notes, 'getItem'> | null, shelf: ClassShelf | null): Promise<LeftClass | null> {
  const texts = [readNote(notes), (await shelf?.keptClass().catch(() => null)) ?? null]
  const [newest] = texts
    .map(recordOf)
    .filter((copy) => copy !== null)
    .sort((a, b) => b.at - a.at)
  if (!newest) return null
  const [kept, last] = [parseClass(newest.class), parseClass(newest.last)]
  return kept || last ? { kept, onScreen: newest.onScreen === true, last } : null
}

/**
 * Puts a class that was under way back, and its screen where that was left open: on the ride of its
 * address or link, or, where that cannot be opened any more, on the ride as it was kept with the class.
 */
export function backToClass(store: AppStore, { kept, onScreen, last }: LeftClass): void {
  if (last) store.getState().restoreLastLed(last)
  if (!kept) return
  store.getState().restoreClass(kept)
  if (!onScreen) return
  const { shown, place, setPlace, receiveRide } = store.getState()
  if (shown?.id === kept.ride.id) setPlace('lead')
  else if (!shown || place === 'lead') receiveRide(kept.ride, 'lead')
}

function readNote(notes: Pick<Notes, 'getItem'> | null): string | null {
  try {
    return notes?.getItem(NAME) ?? null
  } catch {
    return null
  }
}

function recordOf(text: string | null): { at: number; onScreen: unknown; class: unknown; last: unknown } | null {
  try {
    const { at, onScreen, class: kept, last } = Object(JSON.parse(text ?? 'null')) as Record<string, unknown>
    return typeof at === 'number' ? { at, onScreen, class: kept, last } : null
  } catch {
    return null
  }
}

export function parseClass(value: unknown): KeptClass | null {
  const { ride, slotFrom, log } = Object(value) as Record<string, unknown>
  const parsed = parseRide(ride)
  if (!parsed.ok) return null
  const parsedLog = parseLog(log)
  if (log != null && parsedLog === null) return null
  return { ride: parsed.ride, slotFrom: typeof slotFrom === 'number' && Number.isFinite(slotFrom) ? slotFrom : null, log: parsedLog }
}
