import type { RideShelf, SavedRide } from './ports.ts'
import type { GetState, SetState } from './state.ts'

export type Saved = 'saved' | 'saving' | 'failed'

/** The saved rides, and whether the open one is among them as it stands. */
export interface ShelfSlice {
  saved: Saved
  /** Newest first. */
  savedRides: readonly SavedRide[]

  setSaved: (saved: Saved) => void
  /** Reads the list anew; what goes wrong is said in a notice. */
  refreshSavedRides: () => Promise<void>
  /** Opens a saved ride for drafting; one that cannot be read is said so and stays where it is. */
  openSaved: (id: string) => Promise<boolean>
  /** Deletes a saved ride for good; if it is open it is closed first. */
  removeSaved: (id: string) => Promise<void>
}

export function createShelfSlice(set: SetState, get: GetState, shelf: RideShelf | null): ShelfSlice {
  const failed = (sentence: string, error: unknown) => get().notify({ kind: 'problem', sentence, details: [messageOf(error)] })

  const refreshSavedRides = async () => {
    if (!shelf) return
    try {
      set({ savedRides: await shelf.list() })
    } catch (error) {
      failed('The saved rides could not be listed.', error)
    }
  }

  return {
    saved: 'saved',
    savedRides: [],
    setSaved: (saved) => {
      if (get().saved !== saved) set({ saved })
    },
    refreshSavedRides,
    openSaved: async (id) => {
      if (!shelf) return false
      try {
        const loaded = await shelf.load(id)
        if (loaded.ok) get().openRide(loaded.ride)
        else get().notify({ kind: 'problem', sentence: loaded.sentence, details: loaded.details })
        return loaded.ok
      } catch (error) {
        failed('The saved ride could not be opened.', error)
        return false
      }
    },
    removeSaved: async (id) => {
      if (!shelf) return
      if (get().ride?.id === id) get().closeRide()
      try {
        await shelf.remove(id)
      } catch (error) {
        failed('The saved ride could not be deleted.', error)
      }
      await refreshSavedRides()
    },
  }
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error))
