import { beforeEach, describe, expect, it } from 'vitest'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import type { Version } from '#plan/kept/version.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { handedOver } from '#plan/merge/lineage.ts'
import type { Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { RideShelf, VersionShelf } from '#store/ports.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { countedIds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

/** A machine: a store over shelves in memory. */
function machine(name: string) {
  const rides = new Map<string, Ride>()
  const versions = new Map<string, Version>()
  let clock = 0
  const shelf: RideShelf = {
    list: async () => [...rides.values()].map(({ id, title }) => ({ id, title, updated: 0 })),
    load: async (id) => ({ ok: true, ride: rides.get(id)! }),
    save: async (ride) => rides.set(ride.id, ride),
    remove: async (id) => void rides.delete(id),
  }
  const kept: VersionShelf = {
    heads: async () => [...versions.values()].toSorted((a, b) => b.at - a.at).map(({ ride: _ride, ...head }) => head),
    load: async (id) => versions.get(id) ?? null,
    save: async (version) => void versions.set(version.id, { at: ++clock, ...version }),
    remove: async (id) => void versions.delete(id),
  }
  const store = createAppStore({ newId: countedIds(name), shelf, versions: kept })
  return { state: () => store.getState(), rides, versions }
}

type Machine = ReturnType<typeof machine>

const label = (blockId: string, words: string) => (ride: Ride) => patchBlock(ride, { blockId, patch: { label: words } })
const work = ({ state }: Machine, make: (ride: Ride) => ReturnType<typeof patchBlock>) => state().run(make(state().ride!))
const labelOf = ({ state }: Machine, id: string) => findBlock(state().ride!, id)?.block.label

async function send({ state }: Machine): Promise<string> {
  const versions = await state().refreshVersions()
  const sent = versions.filter(({ rideId, kind }) => rideId === state().ride!.id && kind === 'sent').map(({ edition }) => edition)
  const link = encodeLink(handedOver(state().ride!, sent))
  await state().noteHandedOver()
  return link
}

async function open({ state }: Machine, link: string): Promise<void> {
  const decoded = decodeLink(link)
  if (decoded.ok) state().receiveRide(decoded.ride)
  await state().findOwnRide()
}

let [ann, ben]: Machine[] = []

beforeEach(async () => {
  ann = machine('ann')
  ben = machine('ben')
  ann.state().openRide(smallRide())
  await open(ben, await send(ann))
  ben.state().keepCopy()
  await ben.state().refreshVersions()
})

describe('a ride that comes back', () => {
  it('is known as the one it was copied from, and one of strangers is not', async () => {
    work(ben!, label('a', 'ben'))
    await open(ann!, await send(ben!))
    expect(ann!.state().ownRide).toEqual({ id: 'ride', title: 'small ride' })
    await open(ann!, encodeLink({ ...smallRide(), id: 'strange', title: 'of strangers' }))
    expect(ann!.state().ownRide).toBeNull()
  })

  it('is known by the ride itself where its versions were deleted, and compared without a base, which is said', async () => {
    for (const id of [...ben!.versions.keys()]) await ben!.state().removeVersion(id)
    ben!.rides.set(ben!.state().ride!.id, ben!.state().ride!)
    // Also while it is not the one that is open.
    ben!.state().closeRide()
    work(ann!, label('a', 'ann'))
    await open(ben!, await send(ann!))
    expect(ben!.state().ownRide?.title).toBe('small ride')
    await ben!.state().startMerge()
    expect(ben!.state().merging).toMatchObject({ base: null, merge: { based: false, conflicts: [{ id: 'b a label' }] } })
    await open(ben!, encodeLink({ ...smallRide(), id: 'strange', title: 'of strangers' }))
    expect(ben!.state().ownRide).toBeNull()
  })

  it('is taken as one step that can be undone, what was chosen and what was mine in it', async () => {
    work(ben!, label('a', 'ben'))
    work(ben!, label('b', 'ben too'))
    work(ann!, label('a', 'ann'))
    work(ann!, label('c', 'ann too'))
    const before = ann!.state().ride
    await open(ann!, await send(ben!))
    await ann!.state().startMerge()
    expect(ann!.state()).toMatchObject({ place: 'merge', merging: { merge: { based: true } } })
    ann!.state().chooseSide('b a label', 'theirs')
    await ann!.state().takeMerge()

    expect(['a', 'b', 'c'].map((id) => labelOf(ann!, id))).toEqual(['ben', 'ben too', 'ann too'])
    expect(ann!.state()).toMatchObject({ place: 'draft', received: null, merging: null })
    expect(told(ann!.state().past.at(-1)!.label)).toBe('Used changes from “small ride”')
    ann!.state().undo()
    expect(ann!.state().ride).toBe(before)
  })

  it('is compared with what was taken before, not with what came first', async () => {
    work(ben!, label('a', 'ben'))
    await open(ann!, await send(ben!))
    await ann!.state().startMerge()
    await ann!.state().takeMerge()
    work(ann!, label('a', 'ann after ben'))
    work(ben!, label('b', 'ben later'))
    await open(ann!, await send(ben!))
    await ann!.state().startMerge()
    expect(ann!.state().merging?.merge.conflicts).toEqual([])
    expect(ann!.state().merging?.merge.taken).toMatchObject([{ id: 'b b label' }])
  })

  it('whose taking was undone is not taken for had', async () => {
    work(ben!, label('a', 'ben'))
    const link = await send(ben!)
    await open(ann!, link)
    await ann!.state().startMerge()
    await ann!.state().takeMerge()
    ann!.state().undo()
    await open(ann!, link)
    await ann!.state().startMerge()
    expect(ann!.state().merging?.merge.taken).toMatchObject([{ id: 'b a label' }])
  })

  it('is left by cancelling, with nothing changed, and the ride that came in still shown', async () => {
    work(ben!, label('a', 'ben'))
    const [before, past] = [ann!.state().ride, ann!.state().past]
    await open(ann!, await send(ben!))
    await ann!.state().startMerge()
    ann!.state().chooseAll('theirs')
    ann!.state().cancelMerge()
    expect(ann!.state()).toMatchObject({ merging: null, place: 'draft', ride: before, past })
    expect(ann!.state().received).not.toBeNull()
  })

  it('belongs to a ride that is not open, which is opened when its changes are taken', async () => {
    ann!.rides.set('ride', ann!.state().ride!)
    work(ben!, label('a', 'ben'))
    const link = await send(ben!)
    ann!.state().openRide({ ...smallRide(), id: 'another' })
    await open(ann!, link)
    await ann!.state().startMerge()
    await ann!.state().takeMerge()
    expect(ann!.state().ride).toMatchObject({ id: 'ride' })
    expect(labelOf(ann!, 'a')).toBe('ben')
  })

  it('of which no common version is kept is compared, and nothing of it taken by itself', async () => {
    ann!.versions.clear()
    work(ben!, label('a', 'ben'))
    await open(ann!, await send(ben!))
    await ann!.state().startMerge()
    expect(ann!.state().merging).toMatchObject({ base: null, merge: { based: false, taken: [] } })
    expect(ann!.state().merging?.merge.merged).toBe(ann!.state().ride)
  })
})

describe('a demo ride that nobody has changed', () => {
  it('is kept once it is handed over, and what comes back belongs to it', async () => {
    ann!.state().openDemo({ ...smallRide(), id: 'spark' })
    expect(ann!.state().isDemo).toBe(true)
    const link = await send(ann!)
    expect(ann!.state().isDemo).toBe(false)
    const { id } = ann!.state().ride!
    await open(ben!, link)
    ben!.state().keepCopy()
    work(ben!, label('b', 'ben was here'))
    await open(ann!, await send(ben!))
    expect(ann!.state().ownRide?.id).toBe(id)
  })

  it('is kept once a version of it gets a name', async () => {
    ann!.state().openDemo({ ...smallRide(), id: 'spark' })
    await ann!.state().keepVersion('as it came')
    expect(ann!.state().isDemo).toBe(false)
  })
})

describe('a version', () => {
  it('is restored as one step that can be undone, and compared by name', async () => {
    await ann!.state().keepVersion('before')
    work(ann!, label('a', 'later'))
    const [named] = ann!.state().versions!.filter(({ kind }) => kind === 'named')
    expect(named).toMatchObject({ name: 'before', rideId: 'ride' })
    await ann!.state().restoreVersion(named!.id)
    expect(labelOf(ann!, 'a')).toBe('a')
    expect(told(ann!.state().past.at(-1)!.label)).toBe('Restored “before”')
    ann!.state().undo()
    expect(labelOf(ann!, 'a')).toBe('later')
  })

  it('deleted is put back with its time', async () => {
    await ann!.state().keepVersion('before')
    const [named] = ann!.state().versions!.filter(({ kind }) => kind === 'named')
    await ann!.state().removeVersion(named!.id)
    expect(ann!.state().versions!.some(({ id }) => id === named!.id)).toBe(false)
    await ann!.state().putVersionBack(named!.id)
    expect(ann!.state().versions).toContainEqual(named)
    expect(ann!.state().removedVersions).toEqual([])
  })

  it('of another ride is not restored over this one', async () => {
    await ann!.state().keepVersion('before')
    const [named] = ann!.state().versions!.filter(({ kind }) => kind === 'named')
    ann!.state().openRide({ ...smallRide(), id: 'another', title: 'another' })
    expect(await ann!.state().restoreVersion(named!.id)).toBe(false)
    expect(ann!.state().ride?.title).toBe('another')
  })
})

describe('a backup put back', () => {
  it('keeps what stands in its place as a version, changes the open ride as a step, and leaves what is not taken', async () => {
    const { file } = (await ann!.state().makeBackup())!
    expect(file).toMatchObject({ ridewright: 'backup' })
    ann!.rides.set('ride', ann!.state().ride!)
    const backup = JSON.parse(JSON.stringify((await ann!.state().makeBackup())!.file))
    work(ann!, label('a', 'since the backup'))
    await ann!.state().receiveBackup(backup, 'all.backup.json')
    expect(ann!.state().restoring?.entries.find(({ kind }) => kind === 'ride')).toMatchObject({ state: 'different' })
    expect(ann!.state().restoring?.taken.size).toBe(0)

    ann!.state().takeEntry('ride ride', true)
    await ann!.state().restoreBackup()
    expect(labelOf(ann!, 'a')).toBe('a')
    const kept = [...ann!.versions.values()].find(({ name }) => name === 'before restoring a backup')
    expect(kept && findBlock(kept.ride, 'a')?.block.label).toBe('since the backup')
    ann!.state().undo()
    expect(labelOf(ann!, 'a')).toBe('since the backup')
  })

  it('that is damaged is said so, and cancelled changes nothing', async () => {
    await ann!.state().receiveBackup({ ridewright: 'backup', backup: 1 }, 'half.json')
    expect(ann!.state().notice?.sentence).toBe('“half.json” wasn’t opened. It’s a damaged backup.')
    await ann!
      .state()
      .receiveBackup(
        { ridewright: 'backup', backup: 1, rides: [{ updated: 1, ride: { ...smallRide(), id: 'new' } }], versions: [], profiles: [] },
        'one.json',
      )
    expect(ann!.state().restoring?.entries).toMatchObject([{ state: 'new' }])
    ann!.state().cancelBackup()
    expect([ann!.state().restoring, ann!.rides.has('new')]).toEqual([null, false])
  })
})
