import { type NewVersion, readVersion, readVersionHead, type Version, type VersionHead, writeVersion } from '#plan/kept/version.ts'
import { allIn, heldIn, recordsOf, writeTo } from './copies.ts'
import { openKeyedDatabase } from './keyedDatabase.ts'
import type { RideCopy } from './rideCopy.ts'
import { openRideFiles } from './rideFiles.ts'
import { makeRecord } from './rideRecord.ts'
import { serialQueue } from './serialQueue.ts'

/** The versions of rides kept in this browser. Calls are carried out one after the other. */
interface VersionStorage {
  /** Of all rides, newest first. Those that cannot be read are left where they are and not listed. */
  heads: () => Promise<VersionHead[]>
  /** Null where there is none or it cannot be read. */
  load: (id: string) => Promise<Version | null>
  /** Keeps a version under its id, at the time it is or now. Rejects when no copy could be written. */
  save: (version: NewVersion & { at?: number }) => Promise<void>
  remove: (id: string) => Promise<void>
}

/** What version storage needs of the browser. */
interface VersionWorld {
  now: () => number
  database: () => Promise<RideCopy | null>
  files: () => Promise<RideCopy | null>
}

/**
 * Versions the program keeps by itself: of one ride, and of all. Those that were taught are counted apart, so that neither
 * drives the other out. The oldest go first; named ones stay until they are deleted.
 */
const MOST = { exchanged: { ofRide: 24, ofAll: 240 }, taught: { ofRide: 12, ofAll: 240 } } as const

const browserWorld: VersionWorld = {
  now: () => Date.now(),
  database: openVersionDatabase,
  files: () => openRideFiles(() => navigator.storage.getDirectory(), 'versions'),
}

/** The first copy of the versions, apart from the rides: neither can harm the other. */
function openVersionDatabase() {
  return openKeyedDatabase('ridewright.versions', 'versions')
}

/** Opens the two copies of the versions, kept as saved rides are: sealed, whole or not at all. Null where nothing can be kept. */
export async function openVersionStorage(world: VersionWorld = browserWorld): Promise<VersionStorage | null> {
  const copies: RideCopy[] = (await Promise.all([world.database(), world.files()])).filter((copy) => copy !== null)
  if (copies.length === 0) return null
  const inTurn = serialQueue()

  async function heads(): Promise<VersionHead[]> {
    const all = [...(await allIn(copies)).values()]
    return all.flatMap((held) => newest(held, readVersionHead) ?? []).sort((a, b) => b.at - a.at || (a.id < b.id ? -1 : 1))
  }

  async function save({ at = world.now(), ...version }: NewVersion & { at?: number }): Promise<void> {
    const records = recordsOf(await heldIn(copies, version.id))
    const text = JSON.stringify(writeVersion({ ...version, at }))
    await writeTo(copies, version.id, makeRecord({ id: version.id, title: version.name }, text, (records[0]?.revision ?? 0) + 1, at))
    if (version.kind !== 'named') await dropOldest(version)
  }

  async function dropOldest({ id: saved, rideId: savedOf, kind: as }: NewVersion): Promise<void> {
    const isTaught = as === 'taught'
    const { ofRide: mostOfRide, ofAll } = isTaught ? MOST.taught : MOST.exchanged
    const kept = (await heads()).filter(({ kind, id }) => kind !== 'named' && (kind === 'taught') === isTaught && id !== saved)
    const ofRide = new Map<string, number>([[savedOf, 1]])
    for (const [place, { id, rideId }] of kept.entries()) {
      const before = ofRide.get(rideId) ?? 0
      ofRide.set(rideId, before + 1)
      if (before >= mostOfRide || place + 1 >= ofAll) await remove(id)
    }
  }

  async function remove(id: string): Promise<void> {
    for (const copy of copies.toReversed()) await copy.remove(id)
  }

  return {
    heads: () => inTurn(heads),
    load: (id) => inTurn(async () => newest(await heldIn(copies, id), readVersion)),
    save: (version) => inTurn(() => save(version)),
    remove: (id) => inTurn(() => remove(id)),
  }
}

/** The newest of what the copies hold that can be read. */
function newest<Read>(held: readonly unknown[], read: (value: unknown) => Read | null): Read | null {
  for (const { text } of recordsOf(held)) {
    const found = read(jsonOf(text))
    if (found) return found
  }
  return null
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
