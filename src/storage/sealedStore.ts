import { allIn, heldIn, recordsOf, setAside, writeTo } from './copies.ts'
import type { RideCopy } from './rideCopy.ts'
import { makeRecord } from './rideRecord.ts'
import { serialQueue } from './serialQueue.ts'

/** Small things kept under their ids. Calls are carried out one after the other. */
export interface SealedStore<Thing> {
  /** In no order. One that cannot be read is left where it is and not listed. */
  list: () => Promise<Thing[]>
  /** Keeps a thing under its id. Rejects when no copy could be written. */
  save: (thing: Thing) => Promise<void>
  remove: (id: string) => Promise<void>
}

/** What a store of small things needs of the browser. */
export interface SealedWorld {
  now: () => number
  database: () => Promise<RideCopy | null>
  files: () => Promise<RideCopy | null>
}

/** How a kind of thing is written and read. */
interface Kind<Thing> {
  write: (thing: Thing) => string
  /** Null for what is none, or of a form to come. */
  read: (text: string) => Thing | null
  /** What a record is called by people who look into the storage. */
  titleOf: (thing: Thing) => string
}

/** Opens the two copies of such things, kept as saved rides are: sealed, whole or not at all. Null where nothing can be kept. */
export async function openSealedStore<Thing extends { id: string }>(
  world: SealedWorld,
  kind: Kind<Thing>,
): Promise<SealedStore<Thing> | null> {
  const copies: RideCopy[] = (await Promise.all([world.database(), world.files()])).filter((copy) => copy !== null)
  if (copies.length === 0) return null
  const inTurn = serialQueue()

  async function save(thing: Thing): Promise<void> {
    const { id } = thing
    const held = await heldIn(copies, id)
    const records = recordsOf(held)
    if (held.length > 0 && !records.some(({ text }) => kind.read(text))) await setAside(copies, id, held[0])
    const revision = (records[0]?.revision ?? 0) + 1
    await writeTo(copies, id, makeRecord({ id, title: kind.titleOf(thing) }, kind.write(thing), revision, world.now()))
  }

  const list = async (): Promise<Thing[]> => [...(await allIn(copies)).values()].flatMap((held) => newestReadable(held, kind.read) ?? [])

  return {
    list: () => inTurn(list),
    save: (thing) => inTurn(() => save(thing)),
    remove: (id) =>
      inTurn(async () => {
        for (const copy of copies.toReversed()) await copy.remove(id)
      }),
  }
}

function newestReadable<Thing>(held: readonly unknown[], read: Kind<Thing>['read']): Thing | null {
  for (const { text } of recordsOf(held)) {
    const thing = read(text)
    if (thing) return thing
  }
  return null
}
