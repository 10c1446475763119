import { namedVersion } from '#plan/kept/version.ts'
import type { Choices, Side } from '#plan/merge/difference.ts'
import { findBase, isMadeFrom, ownRideOf } from '#plan/merge/findBase.ts'
import { mergedWith } from '#plan/merge/lineage.ts'
import { type Merge, mergeRides } from '#plan/merge/mergeRides.ts'
import { mergeWindows } from '#plan/merge/mergeWindows.ts'
import type { Ride } from '#plan/model.ts'
import { say } from '#words/said.ts'
import { words } from '#words/words.ts'
import type { Ports } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** A ride that came in beside the ride of one's own that it belongs to. */
export interface Merging {
  mine: Ride
  theirs: Ride
  /** The version both were made from; null where none is known. */
  base: Ride | null
  choices: Choices
  /** What comes of the choices made so far. */
  merge: Merge
  /** Both are this ride, in two windows; they are one already, and only what both changed is to be decided. */
  inWindows?: true
}

export interface MergeSlice {
  /** The ride of one's own that the received one belongs to, once it is found. */
  ownRide: { id: string; title: string } | null
  merging: Merging | null

  /** The ride of one's own that another belongs to; null where there is none. */
  ownRideFor: (theirs: Ride) => Promise<{ id: string; title: string } | null>
  /** Looks for the ride of one's own that the received one belongs to. */
  findOwnRide: () => Promise<void>
  /** Puts the received ride beside one's own. Nothing is changed by it. */
  startMerge: () => Promise<void>
  /** Decides a difference; null leaves it as it was decided at first. */
  chooseSide: (differenceId: string, side: Side | null) => void
  /** Decides every conflict for one side. */
  chooseAll: (side: Side) => void
  /** Makes one's own ride what the choices say, as one step that can be undone. */
  takeMerge: () => Promise<void>
  /**
   * Says that two windows changed the same things, and offers to decide them. This window's stand until then; the other
   * window's ride is kept as a version, so that nothing of it is lost.
   */
  offerWindows: (base: Ride, mine: Ride, theirs: Ride) => void
  /** Leaves both rides as they are. */
  cancelMerge: () => void
}

export function createMergeSlice(set: SetState, get: GetState, { shelf, versions }: Pick<Ports, 'shelf' | 'versions'>): MergeSlice {
  /** The ride of one's own, as it is open or as it is saved. */
  const own = async (id: string): Promise<Ride | null> => {
    const { ride } = get()
    if (ride?.id === id) return ride
    const loaded = await shelf?.load(id).catch(() => null)
    return loaded?.ok ? loaded.ride : null
  }

  const baseOf = async (mine: Ride, theirs: Ride): Promise<Ride | null> => {
    const base = findBase(mine, theirs, await get().refreshVersions())
    if (base.kind === 'theirs') return theirs
    if (base.kind === 'unknown') return null
    return (await versions?.load(base.id).catch(() => null))?.ride ?? null
  }

  const choose = (choices: Choices) => {
    const { merging } = get()
    if (!merging) return
    const { base, mine, theirs, inWindows } = merging
    const merge = inWindows && base ? mergeWindows(base, mine, theirs, choices) : mergeRides(base, mine, theirs, choices)
    set({ merging: { ...merging, choices, merge } })
  }

  return {
    ownRide: null,
    merging: null,

    ownRideFor: async (theirs) => {
      const { ride } = get()
      const listed = (await shelf?.list().catch(() => [])) ?? []
      const titles = new Map(listed.filter(({ problem }) => !problem).map(({ id, title }) => [id, title]))
      if (ride) titles.set(ride.id, ride.title)
      const known = ownRideOf(theirs, ride ? [ride.id, ...titles.keys()] : [...titles.keys()], await get().refreshVersions())
      if (known !== undefined) return { id: known, title: titles.get(known)! }
      for (const [id, title] of titles) {
        const mine = await own(id)
        if (mine && isMadeFrom(mine, theirs)) return { id, title }
      }
      return null
    },

    findOwnRide: async () => {
      const { received, ownRideFor } = get()
      set({ ownRide: null })
      if (!received) return
      const ownRide = await ownRideFor(received.ride)
      if (get().received === received) set({ ownRide })
    },

    startMerge: async () => {
      const { received, ownRide } = get()
      const mine = ownRide && (await own(ownRide.id))
      if (!received || !mine) return get().notify({ kind: 'problem', sentence: words.merging.ownNotOpened })
      const theirs = received.ride
      const base = await baseOf(mine, theirs)
      if (get().received !== received) return
      set({ merging: { mine, theirs, base, choices: {}, merge: mergeRides(base, mine, theirs) }, place: 'merge' })
    },

    chooseSide: (id, side) => {
      const { [id]: _before, ...rest } = get().merging?.choices ?? {}
      choose(side === null ? rest : { ...rest, [id]: side })
    },

    chooseAll: (side) => {
      const { merging } = get()
      if (!merging) return
      choose({ ...merging.choices, ...Object.fromEntries(merging.merge.conflicts.map(({ id }) => [id, side])) })
      get().announce(side === 'mine' ? words.merging.allMineChosen : words.merging.allTheirsChosen)
    },

    takeMerge: async () => {
      const { merging, ride } = get()
      if (!merging) return
      const { base, mine, theirs, merge, inWindows } = merging
      if (inWindows && base) {
        const standing = mergeWindows(base, mine, theirs).merged
        set({ merging: null, place: 'draft' })
        const apply = (now: Ride) => (now.id === mine.id ? mergeWindows(standing, now, merge.merged).merged : now)
        get().run({ label: say('merging.windowsResolved'), apply })
        return
      }
      if (ride?.id === mine.id) get().dismissReceived()
      else get().openRide(mine)
      set({ merging: null, ownRide: null, place: 'draft' })
      const taken = mergedWith(merge.merged, theirs)
      get().run({
        label: say('merging.changesUsed', { title: theirs.title || say('names.untitled') }),
        apply: (now) => (now === mine ? taken : now),
      })
      await get().noteReceived(theirs, mine.id)
    },

    offerWindows: (base, mine, theirs) => {
      const merge = mergeWindows(base, mine, theirs)
      set({ merging: { base, mine, theirs, choices: {}, merge, inWindows: true } })
      void versions?.save(namedVersion(theirs, words.merging.otherWindow, get().newId())).catch(() => undefined)
      const many = merge.conflicts.length
      get().notify({
        kind: 'warning',
        sentence: words.merging.windowsDiffer({ count: many }),
        offer: { label: words.merging.resolve, place: 'merge' },
      })
    },

    cancelMerge: () => {
      if (!get().merging) return
      set({ merging: null, place: 'draft' })
      get().announce(words.merging.nothingChanged)
    },
  }
}
