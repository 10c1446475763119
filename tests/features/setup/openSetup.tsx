import { SetupPlace } from '#features/setup/SetupPlace.tsx'
import type { Profile } from '#plan/kept/profile.ts'
import type { Ride } from '#plan/model.ts'
import type { ProfileShelf } from '#store/ports.ts'
import type { SetupPart } from '#store/viewSlice.ts'
import { openPanel, type Panel } from '#tests/features/drafting/panel/openPanel.tsx'

/** A shelf of profiles in memory. */
export function memoryProfiles(): ProfileShelf & { kept: Map<string, Profile> } {
  const kept = new Map<string, Profile>()
  return {
    kept,
    list: async () => [...kept.values()],
    save: async (profile) => void kept.set(profile.id, profile),
    remove: async (id) => void kept.delete(id),
  }
}

/** One part of the place of bikes, riders and house rules over a real store. */
export function openSetup(ride: Ride, part: SetupPart, profiles: ProfileShelf | null = null): Panel {
  return openPanel(ride, (store) => store.getState().showSetupPart(part), <SetupPlace />, profiles)
}
