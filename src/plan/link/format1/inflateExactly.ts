import { Inflate } from 'fflate'
import { BrokenColumns } from './columns.ts'

/** Compressed bytes taken at a time: they give at most about four million, so nothing runs away between two looks at the length. */
const STEP = 4096

/**
 * Inflates a stream that must give so many bytes, and stops as soon as it gives more.
 * @throws BrokenColumns where it gives less, a RangeError where it gives more, and an error of the library's where it is none
 */
export function inflateExactly(length: number, compressed: Uint8Array): Uint8Array {
  const inflated = new Uint8Array(length)
  let filled = 0
  const stream = new Inflate((chunk) => {
    inflated.set(chunk, filled)
    filled += chunk.length
  })
  for (let at = 0; at < compressed.length; at += STEP) {
    stream.push(compressed.subarray(at, at + STEP), at + STEP >= compressed.length)
  }
  if (filled !== length) throw new BrokenColumns()
  return inflated
}
