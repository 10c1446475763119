import { readFileSync } from 'node:fs'

/** A wave file of 16 bits and one channel. Its chunks may stand in any order. */
export function readWav(path: string): { samples: Float32Array; sampleRate: number } {
  const bytes = readFileSync(path)
  let sampleRate = 0
  for (let at = 12; at + 8 <= bytes.length; ) {
    const name = bytes.toString('latin1', at, at + 4)
    const size = bytes.readUInt32LE(at + 4)
    if (name === 'fmt ') sampleRate = bytes.readUInt32LE(at + 12)
    if (name === 'data') {
      const count = Math.min(size, bytes.length - at - 8) >> 1
      return { sampleRate, samples: Float32Array.from({ length: count }, (_, i) => bytes.readInt16LE(at + 8 + 2 * i) / 32_768) }
    }
    at += 8 + size + (size & 1)
  }
  throw new Error(`${path} holds no samples.`)
}
