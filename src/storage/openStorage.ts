import { fingerprint } from '#plan/document/fingerprint.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import type { LoadedRide, SavedRide } from '#plan/kept/savedRide.ts'
import type { Ride } from '#plan/model.ts'
import { allIn, heldIn, recordsOf, setAside, writeTo } from './copies.ts'
import { SAYS, StorageMissing } from './messages.ts'
import type { RideCopy } from './rideCopy.ts'
import { openRideDatabase, type RideDatabase } from './rideDatabase.ts'
import { openRideFiles } from './rideFiles.ts'
import { makeRecord, type RideRecord } from './rideRecord.ts'
import { serialQueue } from './serialQueue.ts'
import { openWindowChannel, type WindowChannel } from './windowChannel.ts'

/** What came of a save. */
interface SavedNow {
  updated: number
  /** Another window had saved this ride since this one last did; what was just saved stands now. */
  overOther: boolean
}

/** The rides kept in this browser. Calls are carried out one after the other, in the order they were made. */
export interface RideStorage {
  /** A sentence when nothing can be kept in this window, else null. */
  warning: string | null
  /** Newest first, unreadable ones last. */
  list: () => Promise<SavedRide[]>
  /** The newest whole copy of a ride that can be read. */
  load: (id: string) => Promise<LoadedRide>
  /** Keeps a ride under its id; nothing is written when it says what is kept already. Rejects when no copy could be written. */
  save: (ride: Ride) => Promise<SavedNow>
  remove: (id: string) => Promise<void>
  /** Id of the ride to open again, null when none was left open. */
  lastOpened: () => Promise<string | null>
  /** Notes which ride is open, null when none is. */
  markOpened: (id: string | null) => Promise<void>
  /** Notes the class being led, as the one who leads it writes it; whether it makes sense is the reader's to judge. */
  keepClass: (text: string) => Promise<void>
  /** The class noted last, null when there is none. */
  keptClass: () => Promise<string | null>
  /** Calls back with the id of every ride another window saves; the result ends it. */
  onSavedElsewhere: (listener: (id: string) => void) => () => void
  close: () => void
}

/** What storage needs of the browser. */
interface StorageWorld {
  now: () => number
  database: () => Promise<RideDatabase | null>
  files: () => Promise<RideCopy | null>
  channel: () => WindowChannel | null
}

const LAST_OPENED = 'lastOpened'
const CLASS = 'class'

const browserWorld: StorageWorld = {
  now: () => Date.now(),
  database: openRideDatabase,
  files: () => openRideFiles(() => navigator.storage.getDirectory()),
  channel: openWindowChannel,
}

/**
 * Opens the two copies of the saved rides: IndexedDB, and a second whole one in the origin's
 * private file system, because IndexedDB has been seen to come back empty after a browser
 * was killed in the middle of a write. Works with either, and says so where there is neither.
 */
export async function openStorage(world: StorageWorld = browserWorld): Promise<RideStorage> {
  const [database, files] = await Promise.all([world.database(), world.files()])
  const copies: RideCopy[] = [database, files].filter((copy) => copy !== null)
  const channel = world.channel()
  const inTurn = serialQueue()
  /** What this window last read or wrote of each ride. */
  const known = new Map<string, { revision: number; updated: number; content: string }>()

  const remember = (record: RideRecord) =>
    known.set(record.id, { revision: record.revision, updated: record.updated, content: fingerprint(record.text) })

  async function load(id: string): Promise<LoadedRide> {
    const values = await heldIn(copies, id)
    if (values.length === 0) return { ok: false, sentence: SAYS.notHere, details: [] }
    const details: string[] = []
    for (const record of recordsOf(values)) {
      const parsed = parseRide(jsonOf(record.text))
      if (parsed.ok) {
        remember(record)
        return parsed
      }
      details.push(...parsed.problems.map(({ sentence }) => sentence))
    }
    return { ok: false, sentence: SAYS.unreadable, details: details.length > 0 ? [...new Set(details)] : [SAYS.damaged] }
  }

  async function save(ride: Ride): Promise<SavedNow> {
    if (copies.length === 0) throw new StorageMissing()
    const text = JSON.stringify(ride)
    const mine = known.get(ride.id)
    const values = await heldIn(copies, ride.id)
    const current = newestOf(values)
    if (mine && current?.revision === mine.revision && mine.content === fingerprint(text))
      return { updated: mine.updated, overOther: false }
    if (!mine && values.length > 0 && !recordsOf(values).some(opens)) await setAside(copies, ride.id, values[0])
    const record = makeRecord(ride, text, Math.max(mine?.revision ?? 0, current?.revision ?? 0) + 1, world.now())
    await writeTo(copies, ride.id, record)
    remember(record)
    channel?.tell(ride.id)
    return { updated: record.updated, overOther: mine !== undefined && current !== null && current.revision > mine.revision }
  }

  async function list(): Promise<SavedRide[]> {
    const byId = await allIn(copies)
    return [...byId].map(([id, held]) => listed(id, held)).sort((a, b) => b.updated - a.updated)
  }

  return {
    warning: copies.length === 0 ? SAYS.nothingKept : null,
    list: () => inTurn(list),
    load: (id) => inTurn(() => load(id)),
    save: (ride) => inTurn(() => save(ride)),
    remove: (id) =>
      inTurn(async () => {
        known.delete(id)
        // The second copy first: cut short in between, the ride is still there and not half gone.
        for (const copy of copies.toReversed()) await copy.remove(id)
      }),
    lastOpened: () =>
      inTurn(async () => {
        if (!database) return (await list()).find((ride) => !ride.problem)?.id ?? null
        return (await database.readMark(LAST_OPENED).catch(() => undefined)) || null
      }),
    markOpened: (id) => inTurn(async () => database?.writeMark(LAST_OPENED, id ?? '')),
    keepClass: (text) => inTurn(async () => database?.writeMark(CLASS, text)),
    keptClass: () => inTurn(async () => (await database?.readMark(CLASS).catch(() => undefined)) || null),
    onSavedElsewhere: (listener) => channel?.listen(listener) ?? (() => {}),
    close: () => {
      database?.close()
      channel?.close()
    },
  }
}

function listed(id: string, held: unknown[]): SavedRide {
  const newest = newestOf(held)
  return newest
    ? { id, title: newest.title, ...aboutOf(newest), updated: newest.updated }
    : { id, title: id, updated: 0, problem: SAYS.unreadable }
}

/** What else the list says of a ride, where its text says it; whether the rest of it can be read shows on opening. */
function aboutOf({ text }: RideRecord): Pick<SavedRide, 'level' | 'slotMinutes'> {
  const { level, slotMinutes } = Object(jsonOf(text)) as Record<string, unknown>
  return {
    ...((level === 'beginner' || level === 'mixed' || level === 'advanced') && { level }),
    ...(typeof slotMinutes === 'number' && { slotMinutes }),
  }
}

/** The newest whole record among what the copies hold. */
const newestOf = (held: unknown[]): RideRecord | null => recordsOf(held)[0] ?? null

const opens = (record: RideRecord): boolean => parseRide(jsonOf(record.text)).ok

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
