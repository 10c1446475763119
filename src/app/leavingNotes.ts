import { parseRide } from '#plan/document/parseRide.ts'
import type { RideStorage } from '#storage/openStorage.ts'
import type { AppStore } from '#store/state.ts'
import type { SavingWorld } from './saving.ts'

/** What notes are written to: localStorage, whose writes are done before the page is gone. */
export type Notes = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

const PREFIX = 'ridewright.left.'

/**
 * Notes the open ride when the page is left before its last change is saved: a write to
 * IndexedDB begun then need not come through. The note goes once the ride is saved.
 */
export function noteOnLeaving(store: AppStore, notes: Notes, now: () => number, world: Pick<SavingWorld, 'onLeaving'>): void {
  let noted: string | null = null
  world.onLeaving(() => {
    const { ride, saved, isDemo } = store.getState()
    if (!ride || isDemo || saved === 'saved') return
    try {
      notes.setItem(PREFIX + ride.id, JSON.stringify({ at: now(), ride }))
      noted = ride.id
    } catch {
      // Full or refused: the save begun is all that can be done.
    }
  })
  store.subscribe(({ saved }) => {
    if (saved !== 'saved' || noted === null) return
    notes.removeItem(PREFIX + noted)
    noted = null
  })
}

/** Has the browser ask before the page is left with changes that can be kept nowhere. */
export function askOnLeaving(store: AppStore, page: Pick<Window, 'addEventListener'>): void {
  page.addEventListener('beforeunload', (event) => {
    const { ride, saved, past } = store.getState()
    if (ride && saved === 'failed' && past.length > 0) event.preventDefault()
  })
}

/** Saves what was noted on leaving, unless the ride was saved again after it, and clears the notes. Resolves in any case. */
export async function saveNoted(notes: Notes, storage: Pick<RideStorage, 'list' | 'save'>): Promise<void> {
  const keys = Array.from({ length: notes.length }, (_, index) => notes.key(index)).filter((key) => key?.startsWith(PREFIX))
  if (keys.length === 0) return
  const saved = await storage.list().catch(() => [])
  for (const key of keys) {
    const note = readNote(notes.getItem(key!))
    const later = saved.some(({ id, updated }) => id === note?.ride.id && updated > note.at)
    try {
      if (note && !later) await storage.save(note.ride)
      notes.removeItem(key!)
    } catch {
      // It stays for the next time.
    }
  }
}

function readNote(text: string | null) {
  try {
    const { at, ride } = JSON.parse(text ?? 'null') as { at: unknown; ride: unknown }
    const parsed = parseRide(ride)
    return parsed.ok && typeof at === 'number' ? { at, ride: parsed.ride } : null
  } catch {
    return null
  }
}
