import { type SaidCue, saidIn } from '#engine/cues/completion/saidIn.ts'
import { type Spot, type Use, usesIn } from '#plan/search/things.ts'
import { words } from '#words/words.ts'
import type { RideShelf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** A saved ride as it is searched. */
export interface SearchedRide {
  id: string
  title: string
  /** When it was changed last, in milliseconds since 1970: what it says is as old as that. */
  updated: number
  location?: string
  uses: readonly Use[]
  /** Its cues, which a new one can be completed to. */
  said: readonly SaidCue[]
}

/** Something to go to, which the place that has it shows once it is there. */
export type Sought =
  | { kind: 'spot'; spot: Spot }
  | { kind: 'finding'; id: string }
  /** A constant by its name, or the moves to avoid. */
  | { kind: 'rule'; name: string }
  /** A song of my songs. */
  | { kind: 'song'; id: string }
  /** A line of the cautions, or of the shortcuts, by its words. */
  | { kind: 'caution'; words: string }
  | { kind: 'shortcut'; words: string }

/** What is looked for, and what other rides have of it. */
export interface SearchSlice {
  /** Saved rides by id, as far as they were looked through. */
  searched: ReadonlyMap<string, SearchedRide>
  /** Saved rides that are still to be looked through. */
  unsearched: number
  sought: Sought | null

  /** Looks through the saved rides that are new or changed, one after another, the latest first; a class that is led ends it. */
  searchRides: () => Promise<void>
  /** Shows it where it is, on the page that has it. */
  seek: (sought: Sought) => void
  /** What was sought is shown. */
  foundIt: () => void
}

/** How many rides are looked through before the page is told. */
const AT_A_TIME = 20

export function createSearchSlice(set: SetState, get: GetState, shelf: RideShelf | null): SearchSlice {
  let running: Promise<void> | null = null

  async function lookThrough(): Promise<void> {
    if (!shelf) return
    const savedRides = await shelf.list()
    const saved = savedRides.filter(({ problem }) => problem === undefined)
    const kept = saved.flatMap(({ id, updated }) => {
      const known = get().searched.get(id)
      return known?.updated === updated ? [[id, known] as const] : []
    })
    const searched = new Map(kept)
    const left = saved.filter(({ id }) => !searched.has(id))
    set({ savedRides, searched: new Map(searched), unsearched: left.length })
    for (const [index, { id, title, updated }] of left.entries()) {
      if (get().place === 'lead') return
      const loaded = await shelf.load(id)
      if (loaded.ok) searched.set(id, { id, title, updated, ...located(loaded.ride), uses: usesIn(loaded.ride), said: saidIn(loaded.ride) })
      // Between two rides the page has its turn: what is typed goes first.
      await new Promise((resolve) => setTimeout(resolve))
      if ((index + 1) % AT_A_TIME === 0) set({ searched: new Map(searched), unsearched: left.length - index - 1 })
    }
    set({ searched: new Map(searched), unsearched: 0 })
  }

  return {
    searched: new Map(),
    unsearched: 0,
    sought: null,
    searchRides: async () => {
      running ??= lookThrough()
      try {
        await running
      } catch (error) {
        get().notify({
          kind: 'problem',
          sentence: words.shelf.ridesNotSearched,
          details: [error instanceof Error ? error.message : String(error)],
        })
      } finally {
        running = null
      }
    },
    seek: (sought) => set({ sought }),
    foundIt: () => set({ sought: null }),
  }
}

const located = ({ location }: { location?: string }) => (location === undefined ? {} : { location })
