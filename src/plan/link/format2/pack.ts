import { strFromU8, strToU8 } from 'fflate'
import { pack as packFormat1, type Unpacked, unpack as unpackFormat1 } from '#plan/link/format1/pack.ts'
import { readVarint, writeVarint } from '#plan/link/varint.ts'
import type { Ride } from '#plan/model.ts'

/** What a ride has gained since format 1. */
const GAINED = ['avoidMoves'] as const satisfies readonly (keyof Ride)[]

/** Whether a ride holds anything that format 1 has no place for. */
export const needsFormat2 = (ride: Ride): boolean => GAINED.some((key) => ride[key] !== undefined)

/** A shareable ride as bytes: the length of what it has gained since format 1, that as JSON in UTF-8, then the rest in format 1. */
export function pack(ride: Ride): Uint8Array {
  const gained = strToU8(JSON.stringify(Object.fromEntries(GAINED.map((key) => [key, ride[key]]))))
  const head: number[] = []
  writeVarint(head, gained.length)
  return Uint8Array.from([...head, ...gained, ...packFormat1(ride)])
}

/** Reads such bytes. What comes out has a ride's form but is unchecked. Never throws. */
export function unpack(bytes: Uint8Array): Unpacked {
  const length = readVarint(bytes, 0)
  if (!length || length.next + length.value > bytes.length) return { ok: false, fault: 'damaged' }
  const end = length.next + length.value
  const gained = read(bytes.subarray(length.next, end))
  const rest = unpackFormat1(bytes.subarray(end))
  if (!gained) return { ok: false, fault: 'damaged' }
  return rest.ok ? { ok: true, document: { ...Object(rest.document), ...gained } } : rest
}

function read(bytes: Uint8Array): Partial<Record<(typeof GAINED)[number], unknown>> | undefined {
  try {
    const held: unknown = JSON.parse(strFromU8(bytes))
    if (typeof held !== 'object' || held === null) return undefined
    return Object.fromEntries(GAINED.filter((key) => Object.hasOwn(held, key)).map((key) => [key, (held as Record<string, unknown>)[key]]))
  } catch {
    return undefined
  }
}
