import type { AppStore } from '#store/state.ts'
import { words } from '#words/words.ts'
import type { Notes } from './leavingNotes.ts'

/** So many rides changed since the last backup are worth a word. */
const MANY = 8
const NAME = 'ridewright.backup'

interface BackupNote {
  /** Milliseconds since 1970; 0 where there was none. */
  at: number
  /** It was said since then that one is due. */
  said: boolean
}

/** Says once at the start, after so many rides were changed without a backup, that one is due; after the next backup it counts anew. */
export function remindOfBackups(store: AppStore, notes: Pick<Notes, 'getItem' | 'setItem'> | null, now: () => number): void {
  let note = readNote(notes)
  const write = (next: BackupNote) => {
    note = next
    try {
      notes?.setItem(NAME, JSON.stringify(next))
    } catch {
      // Full or refused: it is said again at the next start.
    }
  }
  store.subscribe(({ savedRides, backupsMade, place, notice, notify }, before) => {
    if (backupsMade !== before.backupsMade) write({ at: now(), said: false })
    if (note.said || place !== 'start' || notice || savedRides === before.savedRides) return
    const changed = savedRides.filter(({ problem, updated }) => !problem && updated > note.at).length
    if (changed < MANY) return
    write({ ...note, said: true })
    notify({ kind: 'info', sentence: words.app.backupDue({ count: changed, everMade: note.at !== 0 }) })
  })
}

function readNote(notes: Pick<Notes, 'getItem'> | null): BackupNote {
  try {
    const { at, said } = Object(JSON.parse(notes?.getItem(NAME) ?? 'null')) as Record<string, unknown>
    return { at: typeof at === 'number' ? at : 0, said: said === true }
  } catch {
    return { at: 0, said: false }
  }
}
