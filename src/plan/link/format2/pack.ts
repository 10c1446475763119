import { strFromU8, strToU8 } from 'fflate'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import { pack as packFormat1, type Unpacked, unpack as unpackFormat1 } from '#plan/link/format1/pack.ts'
import { readVarint, writeVarint } from '#plan/link/varint.ts'
import type { Block, Ride } from '#plan/model.ts'
import { packRevisions, unpackRevisions } from './revisions.ts'

/** What a ride has gained since format 1. */
const GAINED = ['avoidMoves', 'standIn'] as const satisfies readonly (keyof Ride)[]

/** What a block has gained since format 1, told by its place among all blocks of the ride, from 0. */
type Gained = Partial<Record<(typeof GAINED)[number], unknown>> & {
  ownTotals?: Record<string, unknown>
  /** The revisions' bytes one after the other. */
  ancestors?: unknown
}

/** Whether a ride holds anything that format 1 has no place for. */
export const needsFormat2 = (ride: Ride): boolean =>
  ride.ancestors !== undefined ||
  GAINED.some((key) => ride[key] !== undefined) ||
  blocksOf(ride).some(({ ownTotal }) => ownTotal !== undefined)

/** A shareable ride as bytes: the length of what it has gained since format 1, that as JSON in UTF-8, then the rest in format 1. */
export function pack(ride: Ride): Uint8Array {
  const gained = strToU8(
    JSON.stringify({
      ...Object.fromEntries(GAINED.map((key) => [key, inOrder(ride[key])])),
      ownTotals: ownTotalsOf(ride),
      ancestors: ride.ancestors && packRevisions(ride.ancestors),
    }),
  )
  const head: number[] = []
  writeVarint(head, gained.length)
  return Uint8Array.from([...head, ...gained, ...packFormat1(ride)])
}

/** Fields by their names, so that equal rides give equal bytes. */
const inOrder = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value

/** Reads such bytes. What comes out has a ride's form but is unchecked. Never throws. */
export function unpack(bytes: Uint8Array): Unpacked {
  const length = readVarint(bytes, 0)
  if (!length || length.next + length.value > bytes.length) return { ok: false, fault: 'damaged' }
  const end = length.next + length.value
  const held = read(bytes.subarray(length.next, end))
  const rest = unpackFormat1(bytes.subarray(end))
  if (!held) return { ok: false, fault: 'damaged' }
  if (!rest.ok) return rest
  const gained = GAINED.filter((key) => Object.hasOwn(held, key)).map((key) => [key, held[key]])
  // Format 1 gives back what has the form of a ride.
  const ancestors = held.ancestors === undefined ? {} : { ancestors: unpackRevisions(held.ancestors) }
  return { ok: true, document: { ...withOwnTotals(rest.document as Ride, held.ownTotals), ...Object.fromEntries(gained), ...ancestors } }
}

function read(bytes: Uint8Array): Gained | undefined {
  try {
    const held: unknown = JSON.parse(strFromU8(bytes))
    return typeof held === 'object' && held !== null ? held : undefined
  } catch {
    return undefined
  }
}

const blocksOf = ({ sections }: Ride): Block[] =>
  sections.flatMap(({ blocks }) => blocks.flatMap((item) => ('parts' in item ? item.parts : [item])))

function ownTotalsOf(ride: Ride): Record<string, number> | undefined {
  const totals = blocksOf(ride).flatMap(({ ownTotal }, place) => (ownTotal === undefined ? [] : [[place, ownTotal] as const]))
  return totals.length === 0 ? undefined : Object.fromEntries(totals)
}

function withOwnTotals(ride: Ride, totals: unknown): Ride {
  if (typeof totals !== 'object' || totals === null) return ride
  let place = 0
  return editSections(ride, (section) =>
    editBlocksOf(section, (block) => {
      const own = Object.hasOwn(totals, place) ? (totals as Record<number, Block['ownTotal']>)[place] : undefined
      place += 1
      return patched(block, { ownTotal: own })
    }),
  )
}
