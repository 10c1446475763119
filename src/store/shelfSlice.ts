import type { LoadedRide, SavedRide } from '#plan/kept/savedRide.ts'
import type { Ride } from '#plan/model.ts'
import { withoutSongs } from '#plan/songs/withoutSongs.ts'
import { tell, words } from '#words/words.ts'
import { newRideFrom } from './copyOfRide.ts'
import { keptCollection } from './keptCollection.ts'
import { demoIdOf } from './placeSlice.ts'
import type { Ports } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** Whether the open ride is kept as it stands; `deleted` where another window has deleted it. */
type Saved = 'saved' | 'saving' | 'failed' | 'deleted'

/** A ride that another can begin from. */
type Template = Pick<SavedRide, 'id' | 'title'>

/** The saved rides, and whether the open one is among them as it stands. */
export interface ShelfSlice {
  saved: Saved
  /** Only one of the two copies of the open ride can be written. */
  oneCopy: boolean
  /** Words stand in a field that are not taken yet. */
  typing: boolean
  /** Whether the browser has promised not to clear what is kept by itself; null where it does not say. */
  keeping: 'promised' | 'unpromised' | null
  /** Newest first. */
  savedRides: readonly SavedRide[]

  setSaved: (saved: Saved) => void
  setOneCopy: (oneCopy: boolean) => void
  setTyping: (typing: boolean) => void
  /** Keeps the open ride although another window has deleted it. */
  keepDeleted: () => void
  /** Puts a ride just saved at the head of the list. */
  noteSaved: (ride: SavedRide) => void
  /** Reads the list anew; what goes wrong is said in a notice. */
  refreshSavedRides: () => Promise<void>
  /** Opens a saved ride for drafting, or a demo ride that its address names; one that cannot be read is said so and stays where it is. */
  openSaved: (id: string) => Promise<boolean>
  /** The rides deleted since the page was opened, last one first, until they are put back or given up. */
  removed: readonly Ride[]
  /** Deletes a saved ride; if it is open it is closed first. */
  removeSaved: (id: string) => Promise<void>
  /** Puts a deleted ride back on the shelf. */
  restoreRemoved: (id: string) => Promise<void>
  /** Gives up the way back of a deleted ride. */
  forgetRemoved: (id: string) => void
  /** The ride somebody wants to begin another from; null while nobody is asked how. */
  template: Template | null
  askTemplate: (template: Template | null) => void
  /** Opens a new ride made from one: with its songs, or with a place for each. */
  startFrom: (id: string, as: { title: string; songs: boolean }) => Promise<void>
}

export function createShelfSlice(
  set: SetState,
  get: GetState,
  { shelf, demoRide, newId }: Pick<Ports, 'shelf' | 'demoRide' | 'newId'>,
): ShelfSlice {
  const kept = keptCollection(
    get,
    shelf?.list,
    (savedRides) => set({ savedRides }),
    () => words.shelf.notListed,
  )
  const unread = (loaded: Extract<LoadedRide, { ok: false }>) =>
    get().notify({ kind: 'problem', sentence: tell(loaded.sentence), details: loaded.details.map(tell) })

  /** The demo ride that an id names; null where a ride of one's own has it, or had until it was deleted. */
  const demoNamed = async (id: string): Promise<Ride | null> => {
    const demoId = demoIdOf(id)
    if (demoId === undefined || get().removed.some((ride) => ride.id === id)) return null
    if (shelf && (await shelf.list()).some((ride) => ride.id === id)) return null
    return (await demoRide?.(demoId)) ?? null
  }

  return {
    saved: 'saved',
    oneCopy: false,
    typing: false,
    keeping: null,
    savedRides: [],
    setSaved: (saved) => {
      if (get().saved !== saved) set({ saved })
    },
    setOneCopy: (oneCopy) => {
      if (get().oneCopy !== oneCopy) set({ oneCopy })
    },
    setTyping: (typing) => {
      if (get().typing !== typing) set({ typing })
    },
    keepDeleted: () => {
      const { saved, ride } = get()
      // Nothing in storage is what it was made from any more: it is saved as a new one.
      if (saved === 'deleted' && ride) set({ saved: 'saving', base: null })
    },
    noteSaved: (ride) => set(({ savedRides }) => ({ savedRides: withSaved(savedRides, ride) })),
    refreshSavedRides: async () => void (await kept.refresh()),
    openSaved: async (id) => {
      let opened = false
      await kept.attempt(words.shelf.notOpened, async () => {
        const loaded = await shelf?.load(id)
        const demo = loaded?.ok ? null : await demoNamed(id)
        if (loaded?.ok) get().openRide(loaded.ride)
        else if (demo) get().openDemo(demo, id)
        else if (loaded) unread(loaded)
        opened = loaded?.ok === true || demo !== null
      })
      return opened
    },
    removed: [],
    removeSaved: async (id) => {
      await kept.change(words.shelf.notDeleted, async () => {
        const open = get().ride
        const loaded = open?.id === id ? { ok: true as const, ride: open } : await shelf!.load(id)
        if (open?.id === id) get().closeRide()
        await shelf!.remove(id)
        if (loaded.ok) set({ removed: [loaded.ride, ...get().removed] })
        return loaded.ok ? words.shelf.deleted(loaded.ride) : words.shelf.deletedUnread
      })
    },
    restoreRemoved: async (id) => {
      const ride = get().removed.find((other) => other.id === id)
      if (!ride) return
      await kept.change(words.shelf.notRestored, async () => {
        await shelf!.save(ride)
        get().forgetRemoved(id)
        return words.shelf.restored(ride)
      })
    },
    forgetRemoved: (id) => set(({ removed }) => ({ removed: removed.filter((ride) => ride.id !== id) })),
    template: null,
    askTemplate: (template) => set({ template }),
    startFrom: async (id, { title, songs }) => {
      await kept.attempt(words.shelf.notOpened, async () => {
        const open = get().ride
        const loaded = open?.id === id ? { ok: true as const, ride: open } : await shelf?.load(id)
        if (!loaded) return
        if (!loaded.ok) return unread(loaded)
        get().openRide(newRideFrom(songs ? loaded.ride : withoutSongs(loaded.ride, words.ownPatterns.wasSong), { id: newId(), title }))
        set({ template: null })
        get().announce(words.ownPatterns.started({ title }))
      })
    },
  }
}

/** Opening a ride without a change saves nothing, so its place in the list stays. */
const withSaved = (list: readonly SavedRide[], ride: SavedRide): SavedRide[] =>
  [ride, ...list.filter((other) => other.id !== ride.id)].sort((a, b) => b.updated - a.updated)
