import type { Ride } from '#plan/model.ts'
import type { AppStore } from '#store/state.ts'
import { LEFT } from './leavingNotes.ts'
import type { SavingWorld } from './saving.ts'

/** Milliseconds between two notes at least. */
const BETWEEN_NOTES = 250

/** Where notes are written so that a killed browser keeps them. */
export interface NotePad {
  noteDown: (name: string, text: string | null) => Promise<void>
}

/**
 * Notes what is not saved yet of the open ride, at once with the first change and every quarter
 * of a second while others follow. A save is a dozen steps that each wait for the page, and while
 * somebody edits steadily the page is busy; a note is one step that waits for nothing. It is struck
 * out once the ride is saved, and what is left of it after a kill is saved at the next start.
 *
 * @param window a name no other window has
 */
export function keepJournal(
  store: AppStore,
  pad: NotePad,
  window: string,
  { later, now }: Pick<SavingWorld, 'later'> & { now: () => number },
): void {
  const noted = new Set<string>()
  let last = Number.NEGATIVE_INFINITY
  let isWaiting = false
  let baseText: { base: Ride; text: string } | null = null

  const note = () => {
    isWaiting = false
    const { ride, base, isDemo, saved } = store.getState()
    if (!ride || isDemo || ride === base || saved === 'saved' || saved === 'deleted') return
    if (base && baseText?.base !== base) baseText = { base, text: JSON.stringify(base) }
    last = now()
    const name = `${LEFT}${window}.${ride.id}`
    noted.add(name)
    const text = `{"at":${last},"ride":${JSON.stringify(ride)}${base ? `,"base":${baseText!.text}` : ''}}`
    pad.noteDown(name, text).catch(() => undefined)
  }

  store.subscribe(({ ride, saved }, before) => {
    if (saved === 'saved' || saved === 'deleted') {
      for (const name of noted) pad.noteDown(name, null).catch(() => undefined)
      noted.clear()
    }
    if (ride === before.ride || ride?.id !== before.ride?.id || isWaiting) return
    const left = last + BETWEEN_NOTES - now()
    if (left <= 0) return note()
    isWaiting = true
    later(note, left)
  })
}
