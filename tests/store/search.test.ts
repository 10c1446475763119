import { describe, expect, it, vi } from 'vitest'
import { hitsOf } from '#features/search/matcher.ts'
import { rowsElsewhere } from '#features/search/rowsElsewhere.ts'
import type { Ride } from '#plan/model.ts'
import type { RideShelf } from '#store/ports.ts'
import { aStore } from '#tests/support/aStore.ts'
import '#tests/support/inEnglish.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { smallRide } from '#tests/support/smallRide.ts'

/** A shelf on which each ride was saved before the one behind it. */
function aShelf(rides: readonly Ride[]) {
  const held = new Map(rides.map((ride, index) => [ride.id, { ride, updated: rides.length - index }]))
  const load = vi.fn<RideShelf['load']>(async (id) => ({ ok: true, ride: held.get(id)!.ride }))
  const shelf: RideShelf = {
    list: async () =>
      [...held].map(([id, { ride, updated }]) => ({ id, title: ride.title, updated })).sort((a, b) => b.updated - a.updated),
    load,
    save: async (ride) => void held.set(ride.id, { ride, updated: held.size + 1 }),
    remove: async (id) => void held.delete(id),
  }
  return { shelf, load }
}

/** A ride as somebody has written it, with songs that few of the others have. */
function withOwnSongs(n: number): Ride {
  const ride = plausibleRide(n + 1)
  const sections = ride.sections.map((section) => ({
    ...section,
    song: section.song && { ...section.song, title: `${section.song.title} ${n % 100}` },
  }))
  return { ...ride, id: `ride${n}`, title: `Ride ${n}`, sections }
}

const renamed = (ride: Ride, title: string): Ride => ({
  ...ride,
  sections: ride.sections.map((section, index) => (index === 0 ? { ...section, title } : section)),
})

describe('five hundred rides', () => {
  it('are looked through once, and every song of every ride is found by its title, where it is', async () => {
    const rides = Array.from({ length: 500 }, (_, n) => withOwnSongs(n))
    const { shelf, load } = aShelf(rides)
    const { store, state } = aStore(shelf)
    await state().searchRides()
    expect([state().searched.size, state().unsearched, load.mock.calls.length]).toEqual([500, 0, 500])

    const rows = rowsElsewhere(store, state(), new WeakMap())
    const texts = rows.map(({ text }) => text)
    const idsBy = new Map<string, string[]>()
    for (const { id, sections } of rides)
      for (const { title, song } of sections)
        for (const name of [title, song?.title]) if (name) idsBy.set(name, [...(idsBy.get(name) ?? []), id])
    for (const [name, ids] of idsBy) {
      const found = new Set(hitsOf(texts, name).map(({ index }) => rows[index]!.id.split(':')[1]))
      expect(
        ids.filter((id) => !found.has(id)),
        name,
      ).toEqual([])
    }
    expect(idsBy.size).toBeGreaterThan(200)
  }, 120_000)
})

describe('rides that are kept', () => {
  it('are looked through anew only where they changed, and what was deleted is gone', async () => {
    const small = smallRide()
    const rides = ['a', 'b', 'c'].map((id) => ({ ...small, id, title: id }))
    const { shelf, load } = aShelf(rides)
    const { state } = aStore(shelf)
    await state().searchRides()
    load.mockClear()
    await shelf.save(renamed(rides[1]!, 'Ferry'))
    await shelf.remove('c')
    await state().searchRides()
    expect(load.mock.calls).toEqual([['b']])
    expect([...state().searched.keys()].sort()).toEqual(['a', 'b'])
    expect(
      state()
        .searched.get('b')!
        .uses.map(({ text }) => text),
    ).toContain('Ferry')
  })

  it('are left alone while a class is led', async () => {
    const { shelf, load } = aShelf([{ ...smallRide(), id: 'a' }])
    const { store, state } = aStore(shelf)
    store.setState({ place: 'lead' })
    await state().searchRides()
    expect(load).not.toHaveBeenCalled()
    store.setState({ place: 'start' })
    await state().searchRides()
    expect(state().searched.size).toBe(1)
  })

  it('stand with the day and the room of the last class, else the day of the last change, and the open one not at all', async () => {
    const rides = ['a', 'b', 'open'].map((id) => ({
      ...smallRide(),
      id,
      title: `Ride ${id}`,
      location: id === 'a' ? 'Quay Street' : undefined,
    }))
    const { shelf } = aShelf(rides as Ride[])
    const { store, state } = aStore(shelf)
    state().openRide(rides[2] as Ride)
    await state().searchRides()
    const log = [
      { rideId: 'b', day: '2026-03-02', room: 'Room 2' },
      { rideId: 'b', day: '2026-02-02', room: 'Room 1' },
    ]
    store.setState({ taught: log as never })
    const where = new Set(rowsElsewhere(store, state(), new WeakMap()).map((row) => row.where))
    expect([...where]).toEqual(['Ride a · changed January 1, 1970 · Quay Street', 'Ride b · taught March 2, 2026 · Room 2'])
  })
})
