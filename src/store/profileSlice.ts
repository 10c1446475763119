import type { Profile } from '#plan/kept/profile.ts'
import { MOST_PATTERNS } from '#plan/patterns/ownPattern.ts'
import { words } from '#words/words.ts'
import { keptCollection } from './keptCollection.ts'
import type { ProfileShelf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** The bikes, riders and studio rules kept on this device, to be used in other rides. */
export interface ProfileSlice {
  /** By name. */
  profiles: readonly Profile[]
  /** Whether profiles can be kept. */
  keepsProfiles: boolean

  /** Reads the list anew; what goes wrong is said in a notice. */
  refreshProfiles: () => Promise<void>
  /** Keeps a profile, in place of the one with its id. False when it could not be kept, which is said. */
  keepProfile: (profile: Profile) => Promise<boolean>
  removeProfile: (id: string) => Promise<void>
}

/** Whether another pattern would be more than are kept. */
export const isOneTooMany = (kept: readonly Profile[], { kind, id }: Profile): boolean =>
  kind === 'pattern' && kept.filter((other) => other.kind === kind && other.id !== id).length >= MOST_PATTERNS

export function createProfileSlice(set: SetState, get: GetState, shelf: ProfileShelf | null): ProfileSlice {
  const kept = keptCollection(
    get,
    shelf?.list,
    (profiles) => set({ profiles }),
    () => words.storage.notListed,
  )

  return {
    profiles: [],
    keepsProfiles: shelf !== null,
    refreshProfiles: async () => void (await kept.refresh()),
    keepProfile: async (profile) => {
      if (isOneTooMany(get().profiles, profile)) {
        get().notify({ kind: 'problem', sentence: words.ownPatterns.full({ most: MOST_PATTERNS }) })
        return false
      }
      return kept.change(words.storage.notKept(profile), async () => {
        await shelf!.save(profile)
        return words.storage.kept(profile)
      })
    },
    removeProfile: async (id) => {
      const profile = get().profiles.find((other) => other.id === id)
      if (!profile) return
      await kept.change(words.storage.notRemoved(profile), async () => {
        await shelf!.remove(id)
        return words.storage.removed(profile)
      })
    },
  }
}
