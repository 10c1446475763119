import { parseRide } from '#plan/document/parseRide.ts'
import type { RideStorage } from '#storage/openStorage.ts'
import type { AppStore } from '#store/state.ts'
import type { SavingWorld } from './saving.ts'

/** What notes are written to: localStorage, whose writes are done before the page is gone. */
export type Notes = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

const PREFIX = 'ridewright.left.'
/** What notes in the database are called, before the window and the ride. */
export const LEFT = 'left.'

/**
 * Notes the open ride when the page is left before its last change is saved: a write to
 * IndexedDB begun then need not come through. The note goes once the ride is saved.
 */
export function noteOnLeaving(store: AppStore, notes: Notes, now: () => number, world: Pick<SavingWorld, 'onLeaving'>): void {
  let noted: string | null = null
  world.onLeaving(() => {
    const { ride, base, saved, isDemo } = store.getState()
    if (!ride || isDemo || saved === 'saved') return
    // Deleted elsewhere and not worked on since: it stays deleted.
    if (saved === 'deleted' && ride === base) return
    try {
      notes.setItem(PREFIX + ride.id, JSON.stringify({ at: now(), ride, ...(base && base !== ride && { base }) }))
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

/** A note found, and how it is struck out. */
interface Found {
  text: string | null
  strike: () => void | Promise<void>
}

/**
 * Saves what was noted, on leaving and before a kill, oldest first, and strikes the notes out. It is
 * brought together with what was saved since; a note that does not say what it was made from gives way
 * to that. Resolves in any case.
 *
 * @param pad the notes that a killed browser keeps
 */
export async function saveNoted(
  notes: Notes | null,
  storage: Pick<RideStorage, 'list' | 'save'>,
  pad: Pick<RideStorage, 'noteDown' | 'notesUnder'> | null = null,
): Promise<void> {
  const found = [...foundIn(notes), ...(await foundOn(pad))]
  if (found.length === 0) return
  const saved = await storage.list().catch(() => [])
  const left = found.map(({ text, strike }) => ({ note: readNote(text), strike })).sort((a, b) => (a.note?.at ?? 0) - (b.note?.at ?? 0))
  for (const { note, strike } of left) {
    const isOutdated = !note?.base && saved.some(({ id, updated }) => note && id === note.ride.id && updated > note.at)
    try {
      if (note && !isOutdated) await storage.save(note.ride, note.base)
      await strike()
    } catch {
      // It stays for the next time.
    }
  }
}

function foundIn(notes: Notes | null): Found[] {
  if (!notes) return []
  const keys = Array.from({ length: notes.length }, (_, index) => notes.key(index)).filter((key) => key?.startsWith(PREFIX))
  return keys.map((key) => ({ text: notes.getItem(key!), strike: () => notes.removeItem(key!) }))
}

async function foundOn(pad: Pick<RideStorage, 'noteDown' | 'notesUnder'> | null): Promise<Found[]> {
  const found = (await pad?.notesUnder(LEFT).catch(() => [])) ?? []
  return found.map(({ name, text }) => ({ text, strike: () => pad?.noteDown(name, null) }))
}

function readNote(text: string | null) {
  try {
    const { at, ride, base } = JSON.parse(text ?? 'null') as { at: unknown; ride: unknown; base?: unknown }
    const [parsed, from] = [parseRide(ride), base === undefined ? null : parseRide(base)]
    return parsed.ok && typeof at === 'number' ? { at, ride: parsed.ride, ...(from?.ok && { base: from.ride }) } : null
  } catch {
    return null
  }
}
