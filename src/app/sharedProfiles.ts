import { openWindowChannel, type WindowChannel } from '#storage/windowChannel.ts'
import type { ProfileShelf } from '#store/ports.ts'

/** Has every window know of what another one keeps or removes of bikes, riders, studio rules and patterns. */
export function shareProfiles(channel: WindowChannel | null = openWindowChannel('ridewright.kept')) {
  return {
    /** The same shelf, telling other windows of what changes on it. */
    telling: (shelf: ProfileShelf): ProfileShelf => ({
      list: shelf.list,
      save: async (profile) => {
        await shelf.save(profile)
        channel?.tell(profile.id)
      },
      remove: async (id) => {
        await shelf.remove(id)
        channel?.tell(id)
      },
    }),
    /** Calls back whenever another window changed something. */
    onChanged: (listener: () => void) => channel?.listen(listener),
  }
}
