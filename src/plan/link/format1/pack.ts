import { deflateSync, inflateSync } from 'fflate'
import { readVarint, writeVarint } from '#plan/link/varint.ts'
import type { Ride } from '#plan/model.ts'
import { columnReader } from './columnReader.ts'
import { columnWriter } from './columnWriter.ts'
import { COLUMN_COUNT, rideLayout } from './rideLayout.ts'

/** Most bytes a link may unpack to; looked up in its first bytes, before any are made. */
const MOST_BYTES = 8_000_000

export type Unpacked = { ok: true; document: unknown } | { ok: false; fault: 'tooLarge' | 'damaged' }

/** A shareable ride as bytes: the length of its columns, then these deflated. */
export function pack(ride: Ride): Uint8Array {
  const columns = columnWriter(COLUMN_COUNT)
  rideLayout.write(ride, columns, '')
  const plain = columns.bytes()
  const length: number[] = []
  writeVarint(length, plain.length)
  return Uint8Array.from([...length, ...deflateSync(plain, { level: 9, mem: 8 })])
}

/** Reads such bytes. What comes out has a ride's form but is unchecked. Never throws, never makes more than 8 MB. */
export function unpack(bytes: Uint8Array): Unpacked {
  const length = readVarint(bytes, 0)
  if (!length) return { ok: false, fault: 'damaged' }
  if (length.value > MOST_BYTES) return { ok: false, fault: 'tooLarge' }
  try {
    // A stream that gives more than its length says is cut off there, which is all that may come of it.
    const plain = inflateSync(bytes.subarray(length.next), { out: new Uint8Array(length.value) })
    const columns = columnReader(COLUMN_COUNT, plain)
    const document = rideLayout.read(columns, '')
    return plain.length === length.value ? { ok: true, document } : { ok: false, fault: 'damaged' }
  } catch {
    return { ok: false, fault: 'damaged' }
  }
}
