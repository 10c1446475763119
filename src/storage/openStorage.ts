import { parseRide } from '#plan/document/parseRide.ts'
import { sameValue } from '#plan/edits.ts'
import type { LoadedRide, SavedRide } from '#plan/kept/savedRide.ts'
import type { Merge } from '#plan/merge/mergeRides.ts'
import { mergeWindows } from '#plan/merge/mergeWindows.ts'
import type { Ride } from '#plan/model.ts'
import type { Text } from '#words/said.ts'
import { type Alone, aloneInBrowser } from './alone.ts'
import { allIn, countHolding, heldIn, recordsOf, setAside, writeTo } from './copies.ts'
import { SAYS, StorageMissing } from './messages.ts'
import type { RideCopy } from './rideCopy.ts'
import { openRideDatabase, type RideDatabase } from './rideDatabase.ts'
import { openRideFiles } from './rideFiles.ts'
import { makeRecord, type RideRecord } from './rideRecord.ts'
import { serialQueue } from './serialQueue.ts'
import { openWindowChannel, type WindowChannel } from './windowChannel.ts'

/** Copies there should be of everything. */
export const COPIES = 2

/** What came of a save. */
export type SaveOutcome =
  /** Another window has deleted the ride since; nothing was written. */
  | { deleted: true }
  | {
      deleted: false
      updated: number
      /** The ride as it is kept now: the one given, or that one with what another window had saved since. */
      stored: Ride
      /** How that came about; null where no other window had saved. */
      merged: { base: Ride; theirs: Ride; merge: Merge } | null
      /** Copies that hold it, of two. */
      copies: number
      /** The whole storage was empty although this ride had been kept: this site's data was cleared. */
      wasCleared: boolean
    }

/** The rides kept in this browser. Calls are carried out one after the other, in the order they were made. */
export interface RideStorage {
  /** Said when nothing can be kept in this window, else null. */
  warning: Text | null
  /** Newest first, unreadable ones last. */
  list: () => Promise<SavedRide[]>
  /** The newest whole copy of a ride that can be read. */
  load: (id: string) => Promise<LoadedRide>
  /**
   * Keeps a ride under its id; nothing is written when both copies say so already. What another window saved since is
   * brought together with it. Rejects when no copy could be written.
   *
   * @param base what the ride was made from, as it was loaded or last stored; absent, the ride takes the place of what is kept
   */
  save: (ride: Ride, base?: Ride) => Promise<SaveOutcome>
  /** How many of the two copies hold a ride; cheap. */
  countCopies: (id: string) => Promise<number>
  /** Makes the second copies again that are missing or behind. */
  mend: () => Promise<void>
  remove: (id: string) => Promise<void>
  /** Id of the ride to open again, null when none was left open. */
  lastOpened: () => Promise<string | null>
  /** Notes which ride is open, null when none is. */
  markOpened: (id: string | null) => Promise<void>
  /**
   * Writes a few words down under a name, or strikes them out with null. It waits for nothing: what is written is on its
   * way when the call returns, however busy the page is after it.
   */
  noteDown: (name: string, text: string | null) => Promise<void>
  /** What is written down under names that begin so. */
  notesUnder: (prefix: string) => Promise<{ name: string; text: string }[]>
  /** Notes the class being led, as the one who leads it writes it; whether it makes sense is the reader's to judge. */
  keepClass: (text: string) => Promise<void>
  /** The class noted last, null when there is none. */
  keptClass: () => Promise<string | null>
  /** Calls back with the id of every ride another window saves or deletes; the result ends it. */
  onSavedElsewhere: (listener: (id: string) => void) => () => void
  close: () => void
}

/** What storage needs of the browser. */
interface StorageWorld {
  now: () => number
  database: () => Promise<RideDatabase | null>
  files: () => Promise<RideCopy | null>
  channel: () => WindowChannel | null
  /** One window at a time; absent where there is only one. */
  alone?: Alone
}

/** Stands in the database from its first day: where it is missing, everything is. */
const MADE = 'made'
const LAST_OPENED = 'lastOpened'
const CLASS = 'class'
const NOTE = 'note.'

const browserWorld: StorageWorld = {
  now: () => Date.now(),
  database: openRideDatabase,
  files: () => openRideFiles(() => navigator.storage.getDirectory()),
  channel: openWindowChannel,
  alone: aloneInBrowser,
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
  const alone = world.alone ?? ((_name, task) => task())
  const aloneWith: Alone = (id, task) => alone(`ride.${id}`, task)
  /** The revision under which a ride that was loaded or stored is kept. */
  const revisions = new WeakMap<Ride, number>()
  void inTurn(async () => database?.writeMark(MADE, 'yes')).catch(() => undefined)

  async function load(id: string): Promise<LoadedRide> {
    const values = await heldIn(copies, id)
    if (values.length === 0) return { ok: false, sentence: SAYS.notHere, details: [] }
    const details = new Map<string, Text>()
    for (const record of recordsOf(values)) {
      const parsed = parseRide(jsonOf(record.text))
      if (parsed.ok) {
        revisions.set(parsed.ride, record.revision)
        return parsed
      }
      for (const { text } of parsed.problems) details.set(JSON.stringify(text), text)
    }
    return { ok: false, sentence: SAYS.unreadable, details: details.size > 0 ? [...details.values()] : [SAYS.damaged] }
  }

  async function save(ride: Ride, base?: Ride): Promise<SaveOutcome> {
    if (copies.length === 0) throw new StorageMissing()
    const values = await heldIn(copies, ride.id)
    const current = newestOf(values)
    const known = base && revisions.get(base)
    const isGone = values.length === 0 && known !== undefined
    if (isGone && (await database?.readMark(MADE).catch(() => undefined))) return { deleted: true }

    const isOurs = current !== null && current.revision === known
    const theirs = isOurs ? null : readableIn(values)
    const merge = base && theirs ? mergeWindows(base, ride, theirs.ride) : null
    const stored = merge?.merged ?? ride
    const now = { deleted: false as const, stored, merged: merge && { base: base!, theirs: theirs!.ride, merge }, wasCleared: isGone }
    const kept = isOurs ? base : theirs?.ride
    if (current && kept && sameValue(stored, kept)) {
      revisions.set(stored, current.revision)
      const written = isBehind(values) ? await writeTo(copies, ride.id, current) : copies.length
      return { ...now, updated: current.updated, copies: written }
    }
    if (values.length > 0 && !isOurs && !theirs) await setAside(copies, ride.id, values[0])
    const record = makeRecord(stored, JSON.stringify(stored), Math.max(known ?? 0, current?.revision ?? 0) + 1, world.now())
    const written = await writeTo(copies, ride.id, record)
    revisions.set(stored, record.revision)
    if (isGone) await database?.writeMark(MADE, 'yes').catch(() => undefined)
    channel?.tell(ride.id)
    return { ...now, updated: record.updated, copies: written }
  }

  /** Brings every copy of a ride up to the newest. */
  async function mendOne(id: string): Promise<void> {
    const values = await heldIn(copies, id)
    const newest = newestOf(values)
    if (newest && isBehind(values)) await writeTo(copies, id, newest)
  }

  const isBehind = (values: readonly unknown[]) => {
    const records = recordsOf(values)
    return values.length < copies.length || records.length < values.length || records.some(({ seal }) => seal !== records[0]!.seal)
  }

  async function list(): Promise<SavedRide[]> {
    const byId = await allIn(copies)
    return [...byId].map(([id, held]) => listed(id, held)).sort((a, b) => b.updated - a.updated)
  }

  return {
    warning: copies.length === 0 ? SAYS.nothingKept : null,
    list: () => inTurn(list),
    load: (id) => inTurn(() => load(id)),
    save: (ride, base) => inTurn(() => aloneWith(ride.id, () => save(ride, base))),
    countCopies: (id) => countHolding(copies, id),
    mend: async () => {
      if (copies.length < COPIES) return
      const behind = [...(await inTurn(() => allIn(copies)))].filter(([, held]) => isBehind(held))
      for (const [id] of behind) await inTurn(() => aloneWith(id, () => mendOne(id))).catch(() => undefined)
    },
    remove: (id) =>
      inTurn(() =>
        aloneWith(id, async () => {
          // The second copy first: cut short in between, the ride is still there and not half gone.
          for (const copy of copies.toReversed()) await copy.remove(id)
          channel?.tell(id)
        }),
      ),
    lastOpened: () =>
      inTurn(async () => {
        const noted = await database?.readMark(LAST_OPENED).catch(() => undefined)
        // Never noted, or lost with the database: the ride saved last is the likeliest.
        return noted === undefined ? ((await list()).find((ride) => !ride.problem)?.id ?? null) : noted || null
      }),
    markOpened: (id) => inTurn(async () => database?.writeMark(LAST_OPENED, id ?? '')),
    noteDown: async (name, text) => {
      await (text === null ? database?.removeMark(NOTE + name) : database?.writeMark(NOTE + name, text, true))
    },
    notesUnder: async (prefix) => {
      const marks = (await database?.marksUnder(NOTE + prefix).catch(() => [])) ?? []
      return marks.map(({ name, value }) => ({ name: name.slice(NOTE.length), text: value }))
    },
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

/** The newest ride among what the copies hold that opens. */
function readableIn(held: readonly unknown[]): { ride: Ride } | null {
  for (const { text } of recordsOf(held)) {
    const parsed = parseRide(jsonOf(text))
    if (parsed.ok) return { ride: parsed.ride }
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
