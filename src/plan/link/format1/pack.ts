import { deflateSync } from 'fflate'
import { oldestVersion } from '#plan/document/oldestVersion.ts'
import type { Ride } from '#plan/model.ts'
import { columnReader, readColumns } from './columnReader.ts'
import { columnWriter } from './columnWriter.ts'
import { inflateExactly } from './inflateExactly.ts'
import { COLUMN_COUNT, rideLayout } from './rideLayout.ts'

/**
 * Most bytes of text a link may unpack to; their number is read before any are made.
 * A ride has a million characters at most, and none takes more than four bytes.
 */
const MOST_BYTES = 4_000_000

type Unpacked = { ok: true; document: unknown } | { ok: false; fault: 'tooLarge' | 'damaged' }

/** A shareable ride as bytes: its columns, then its texts deflated. */
export function pack(ride: Ride): Uint8Array {
  const writer = columnWriter(COLUMN_COUNT)
  rideLayout.write({ ...ride, schema: oldestVersion(ride) }, writer, '')
  const { columns, texts } = writer.finish()
  return Uint8Array.from([...columns, ...deflateSync(Uint8Array.from(texts), { level: 9 })])
}

/** Reads such bytes. What comes out has a ride's form but is unchecked. Never throws, never makes more than 4 MB of text. */
export function unpack(bytes: Uint8Array): Unpacked {
  try {
    const columns = readColumns(COLUMN_COUNT, bytes)
    const length = columns.textLengths.reduce((sum, each) => sum + each, 0)
    if (length > MOST_BYTES) return { ok: false, fault: 'tooLarge' }
    const texts = inflateExactly(length, bytes.subarray(columns.end))
    return { ok: true, document: rideLayout.read(columnReader(columns, texts), '') }
  } catch {
    return { ok: false, fault: 'damaged' }
  }
}
