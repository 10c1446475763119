import { taughtId } from '#plan/kept/version.ts'
import type { KeptSongPlan, SongPlan } from '#plan/songPlans/songPlan.ts'
import type { RideShelf, VersionShelf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** What was once planned for songs, found in the rides as they were taught and in those that are saved. */
export interface SongPlansSlice {
  /** Of all songs: those taught first, the latest first. Null until somebody wants to see them. */
  songPlans: readonly SongPlan[] | null

  /** Looks through what was taught and the saved rides, as far as they are new or changed, one after another; a class that is led ends it. */
  wantSongPlans: () => Promise<void>
}

/** What a ride was found to hold, as it stood then. */
interface Found {
  /** When the ride was changed last, and what the log said of it. */
  asOf: string
  plans: readonly KeptSongPlan[]
}

export function createSongPlansSlice(set: SetState, get: GetState, shelf: RideShelf | null, versions: VersionShelf | null): SongPlansSlice {
  let running: Promise<void> | null = null
  /** It was asked for again while it ran. */
  let again = false
  let listed = false
  let joined = ''
  const inRides = new Map<string, Found>()
  const inVersions = new Map<string, Found>()

  async function look(): Promise<void> {
    const { joinPlans, plansIn, revisionInLog } = await import('#plan/songPlans/songPlan.ts')
    if (!listed) {
      await Promise.all([get().refreshSavedRides(), get().refreshTaught(), get().refreshVersions()])
      listed = true
    }
    const { taught, savedRides } = get()
    const open = get().ride?.id
    const pause = () => new Promise((resolve) => setTimeout(resolve))

    const named = new Set(taught.map(({ rideId, revision }) => taughtId(rideId, revision)))
    const heads = (get().versions ?? []).filter(({ kind, id }) => kind === 'taught' && named.has(id))
    forget(
      inVersions,
      heads.map(({ id }) => id),
    )
    for (const { id, rideId, at } of heads) {
      if (get().place === 'lead') return
      if (inVersions.has(id)) continue
      const version = await versions?.load(id).catch(() => null)
      const revision = id.slice(`${rideId}.taught.`.length)
      inVersions.set(id, { asOf: '', plans: version ? plansIn({ ride: version.ride, at, revision }) : [] })
      await pause()
    }

    const rides = savedRides.filter(({ problem }) => problem === undefined)
    forget(
      inRides,
      rides.map(({ id }) => id),
    )
    for (const { id, updated } of rides) {
      if (get().place === 'lead') return
      const asOf = `${updated} ${taught.filter(({ rideId }) => rideId === id).length}`
      // The one that is open changes with every key; what it has is on the screen.
      if (inRides.get(id)?.asOf === asOf || id === open) continue
      const loaded = await shelf?.load(id)
      const plans = loaded?.ok ? plansIn({ ride: loaded.ride, at: updated, revision: revisionInLog(loaded.ride, taught) }) : []
      inRides.set(id, { asOf, plans })
      await pause()
    }

    const found = [...inVersions, ...[...inRides].filter(([id]) => id !== open)]
    const now = JSON.stringify([found.map(([id, { asOf }]) => [id, asOf]), taught])
    if (now === joined && get().songPlans) return
    joined = now
    set({
      songPlans: joinPlans(
        found.flatMap(([, { plans }]) => plans),
        taught,
      ),
    })
  }

  return {
    songPlans: null,
    wantSongPlans: async () => {
      if (running) {
        again = true
        return running
      }
      running = look()
      try {
        await running
      } catch {
        // Nobody asked for them by a press: where rides cannot be read, opening one says so.
      } finally {
        running = null
      }
      if (!again) return
      again = false
      await get().wantSongPlans()
    },
  }
}

function forget(found: Map<string, Found>, stay: readonly string[]): void {
  const kept = new Set(stay)
  for (const id of found.keys()) if (!kept.has(id)) found.delete(id)
}
