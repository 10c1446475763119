import {
  type NewVersion,
  namedVersion,
  receivedVersion,
  sentVersion,
  taughtVersion,
  type Version,
  type VersionHead,
} from '#plan/kept/version.ts'
import { shareable } from '#plan/link/shareable.ts'
import { sentOf } from '#plan/merge/findBase.ts'
import { descendedFrom, handedOver } from '#plan/merge/lineage.ts'
import type { Ride } from '#plan/model.ts'
import { say } from '#words/said.ts'
import { words } from '#words/words.ts'
import { keptCollection } from './keptCollection.ts'
import type { VersionShelf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** Versions of rides kept on this machine: under a name, and by themselves whenever a ride goes out or comes in. */
export interface VersionSlice {
  /** Of all rides, newest first; null until they are read. */
  versions: readonly VersionHead[] | null
  /** Whether versions can be kept. */
  keepsVersions: boolean
  /** Versions deleted since the page was opened, last one first, until they are put back. */
  removedVersions: readonly Version[]

  /** Reads the list anew and gives it back; what goes wrong is said in a notice. */
  refreshVersions: () => Promise<readonly VersionHead[]>
  /** Keeps the open ride as it stands, under a name. */
  keepVersion: (name: string) => Promise<boolean>
  /** A version with its ride; null, and said so, where it cannot be read. */
  openVersion: (id: string) => Promise<Version | null>
  /** Makes the open ride what it was in a version, as one step that can be undone. */
  restoreVersion: (id: string) => Promise<boolean>
  removeVersion: (id: string) => Promise<void>
  putVersionBack: (id: string) => Promise<void>
  /** Notes that the open ride was handed over as it stands: it may come back changed. */
  noteHandedOver: () => Promise<void>
  /** Notes what came in for a ride of one's own. */
  noteReceived: (came: Ride, rideId: string) => Promise<void>
  /** Keeps a ride as it was taught, so that its songs can be ridden so again. */
  noteTaught: (ride: Ride) => Promise<void>
}

export function createVersionSlice(set: SetState, get: GetState, shelf: VersionShelf | null, newId: () => string): VersionSlice {
  const kept = keptCollection<VersionHead>(
    get,
    shelf?.heads,
    (versions) => set({ versions }),
    () => words.merging.versionsNotListed,
  )

  const save = (version: NewVersion & { at?: number }, sentence: string): Promise<boolean> =>
    kept.change(sentence, () => shelf!.save(version))

  const openVersion = async (id: string) => {
    const version = await shelf?.load(id).catch(() => null)
    if (!version) get().notify({ kind: 'problem', sentence: words.merging.versionUnreadable })
    return version ?? null
  }

  return {
    versions: shelf ? null : [],
    keepsVersions: shelf !== null,
    removedVersions: [],
    refreshVersions: kept.refresh,
    openVersion,

    keepVersion: async (name) => {
      const { ride, received } = get()
      if (!ride || received) return false
      get().keepDemo()
      const kept = await save(namedVersion(ride, name, newId()), words.merging.versionNotSaved({ version: name }))
      if (kept) get().announce(words.merging.versionSaved({ version: name }))
      return kept
    },

    restoreVersion: async (id) => {
      const version = await openVersion(id)
      if (!version || version.rideId !== get().ride?.id) return false
      const { name, ride: was } = version
      return get().run({ label: say('merging.versionRestored', { version: name }), apply: (now) => restored(now, was) })
    },

    removeVersion: async (id) => {
      const version = await openVersion(id)
      if (!version) return
      await kept.change(words.merging.versionNotDeleted, async () => {
        await shelf!.remove(id)
        set({ removedVersions: [version, ...get().removedVersions] })
        return words.merging.versionDeleted({ version: version.name })
      })
    },

    putVersionBack: async (id) => {
      const version = get().removedVersions.find((other) => other.id === id)
      if (!version || !(await save(version, words.merging.versionNotUndeleted))) return
      set({ removedVersions: get().removedVersions.filter((other) => other !== version) })
      get().announce(words.merging.versionUndeleted({ version: version.name }))
    },

    noteHandedOver: async () => {
      const { ride, received, versions } = get()
      if (!ride || received || !shelf) return
      // What comes back changed has to find the ride it belongs to.
      get().keepDemo()
      const going = shareable(handedOver(ride, sentOf(ride.id, versions ?? [])))
      await save(sentVersion(going), words.merging.sentNotNoted)
    },

    noteReceived: async (came, rideId) => {
      await save(receivedVersion(came, rideId), words.merging.receivedNotNoted)
    },

    noteTaught: async (ride) => {
      await save(taughtVersion(ride), words.merging.taughtNotNoted)
    },
  }
}

/** A ride made what it was, with the id and the lineage it has now. */
function restored(now: Ride, was: Ride): Ride {
  const { ancestors: _ancestors, parent: _parent, ...content } = was
  const ride = { ...content, id: now.id, ...(now.parent && { parent: now.parent }) }
  return descendedFrom(ride, now.ancestors ?? [])
}
