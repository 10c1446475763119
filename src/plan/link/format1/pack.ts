import { deflateSync, inflateSync } from 'fflate'
import type { Ride } from '#plan/model.ts'
import { columnReader, readColumns } from './columnReader.ts'
import { columnWriter } from './columnWriter.ts'
import { COLUMN_COUNT, rideLayout } from './rideLayout.ts'

/** Most bytes of text a link may unpack to; their number is read before any are made. */
const MOST_BYTES = 8_000_000

export type Unpacked = { ok: true; document: unknown } | { ok: false; fault: 'tooLarge' | 'damaged' }

/** A shareable ride as bytes: its columns, then its texts deflated. */
export function pack(ride: Ride): Uint8Array {
  const writer = columnWriter(COLUMN_COUNT)
  rideLayout.write(ride, writer, '')
  const { columns, texts } = writer.finish()
  return Uint8Array.from([...columns, ...deflateSync(Uint8Array.from(texts), { level: 9, mem: 8 })])
}

/** Reads such bytes. What comes out has a ride's form but is unchecked. Never throws, never makes more than 8 MB. */
export function unpack(bytes: Uint8Array): Unpacked {
  try {
    const columns = readColumns(COLUMN_COUNT, bytes)
    const length = columns.textLengths.reduce((sum, each) => sum + each, 0)
    if (length > MOST_BYTES) return { ok: false, fault: 'tooLarge' }
    // A stream that gives more than its length says is cut off there, one that gives less is refused.
    const texts = inflateSync(bytes.subarray(columns.end), { out: new Uint8Array(length) })
    if (texts.length !== length) return { ok: false, fault: 'damaged' }
    return { ok: true, document: rideLayout.read(columnReader(columns, texts), '') }
  } catch {
    return { ok: false, fault: 'damaged' }
  }
}
