import { describe, expect, it, vi } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { taughtOf } from '#engine/log/taughtOf.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import type { Version } from '#plan/kept/version.ts'
import type { Ride } from '#plan/model.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { RideShelf, TaughtShelf, VersionShelf } from '#store/ports.ts'
import { countedIds, smallRide } from '#tests/support/smallRide.ts'
import '#tests/support/inEnglish.ts'

const ride: Ride = { ...smallRide(), title: 'Thursday' }

/** A page with everything kept in memory. */
function aMachine(...rides: Ride[]) {
  const held = new Map(rides.map((one, index) => [one.id, { ride: one, updated: index + 1 }]))
  const load = vi.fn<RideShelf['load']>(async (id) => ({ ok: true, ride: held.get(id)!.ride }))
  const shelf: RideShelf = {
    list: async () => [...held].map(([id, one]) => ({ id, title: one.ride.title, updated: one.updated })),
    load,
    save: async (one) => void held.set(one.id, { ride: one, updated: held.size + 10 }),
    remove: async (id) => void held.delete(id),
  }
  const log = new Map<string, TaughtClass>()
  const taught: TaughtShelf = {
    list: async () => [...log.values()],
    save: async (entry) => void log.set(entry.id, entry),
    remove: async (id) => void log.delete(id),
  }
  const kept = new Map<string, Version>()
  const versions: VersionShelf = {
    heads: async () => [...kept.values()],
    load: async (id) => kept.get(id) ?? null,
    save: async (version) => void kept.set(version.id, { at: kept.size, ...version }),
    remove: async (id) => void kept.delete(id),
  }
  const store = createAppStore({ newId: countedIds('n'), shelf, taught, versions })
  const teach = (one: Ride, id: string, day: string) =>
    store.getState().keepTaught(taughtOf({ ride: one, report: computeRide(one) }, { id, day }))
  return { state: store.getState, shelf, load, kept, teach }
}

const plans = ({ state }: ReturnType<typeof aMachine>) =>
  state().songPlans!.map(({ rideTitle, clip, taught }) => [rideTitle, clip.ride.sections[0]!.blocks.length, taught?.day])

describe('what was planned for songs', () => {
  it('is looked for when it is wanted, and again only in what changed; the open ride is none of it', async () => {
    const here = aMachine(ride, { ...ride, id: 'other', title: 'Friday' })
    expect(here.state().songPlans).toBeNull()
    await here.state().wantSongPlans()
    await here.state().wantSongPlans()
    expect(here.load).toHaveBeenCalledTimes(2)
    expect(plans(here)).toEqual([
      ['Friday', 3, undefined],
      ['Friday', 2, undefined],
    ])
    here.state().openRide(ride)
    await here.shelf.save({ ...ride, id: 'other', title: 'Saturday' })
    await here.state().refreshSavedRides()
    await here.state().wantSongPlans()
    expect(here.load).toHaveBeenCalledTimes(3)
    expect(plans(here).map(([title]) => title)).toEqual(['Saturday', 'Saturday'])
  })

  it('is kept as it was taught, whatever becomes of the ride', async () => {
    const here = aMachine(ride)
    here.state().openRide(ride)
    await here.teach(ride, 'a', '2026-11-25')
    expect([...here.kept.values()].map(({ kind, name }) => [kind, name])).toEqual([['taught', 'Thursday']])
    here.state().run(deleteItems(ride, ['b', 'c']))
    await here.state().wantSongPlans()
    expect(plans(here)).toEqual([
      ['Thursday', 3, '2026-11-25'],
      ['Thursday', 2, '2026-11-25'],
    ])
    // Taught once more: one version, and the later day.
    here.state().openRide(ride)
    await here.teach(ride, 'b', '2026-11-26')
    await here.state().wantSongPlans()
    expect([here.kept.size, plans(here)[0]]).toEqual([1, ['Thursday', 3, '2026-11-26']])
    // Nobody says any more that it was taught.
    await here.state().removeTaught('a')
    await here.state().removeTaught('b')
    await here.state().wantSongPlans()
    expect(plans(here)).toEqual([])
  })

  it('that was logged before rides were kept as taught is known by the ride, while it says the same', async () => {
    const here = aMachine(ride)
    await here.teach(ride, 'a', '2026-11-25')
    expect(here.kept.size).toBe(0)
    await here.state().wantSongPlans()
    expect(plans(here)[0]).toEqual(['Thursday', 3, '2026-11-25'])
  })
})
