import type { Profile } from '#plan/kept/profile.ts'
import { words } from '#words/words.ts'
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

export function createProfileSlice(set: SetState, get: GetState, shelf: ProfileShelf | null): ProfileSlice {
  const failed = (sentence: string, error: unknown) =>
    get().notify({ kind: 'problem', sentence, details: [error instanceof Error ? error.message : String(error)] })

  const refreshProfiles = async () => {
    if (!shelf) return
    try {
      set({ profiles: await shelf.list() })
    } catch (error) {
      failed(words.storage.notListed, error)
    }
  }

  return {
    profiles: [],
    keepsProfiles: shelf !== null,
    refreshProfiles,
    keepProfile: async (profile) => {
      if (!shelf) return false
      try {
        await shelf.save(profile)
        get().announce(words.storage.kept(profile))
      } catch (error) {
        failed(words.storage.notKept(profile), error)
        return false
      }
      await refreshProfiles()
      return true
    },
    removeProfile: async (id) => {
      const profile = get().profiles.find((other) => other.id === id)
      if (!shelf || !profile) return
      try {
        await shelf.remove(id)
        get().announce(words.storage.removed(profile))
      } catch (error) {
        failed(words.storage.notRemoved(profile), error)
      }
      await refreshProfiles()
    },
  }
}
