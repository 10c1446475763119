/** Takes whole numbers and lays them out bit by bit, high bits first. */
export interface BitWriter {
  /** The lowest bits of a value, so many of them. */
  bits(value: number, width: number): void
  bytes(): number[]
}

export interface BitReader {
  /** @throws RangeError at the end of the bytes */
  bits(width: number): number
  /** The first whole byte not read from. */
  nextByte(): number
}

export function bitWriter(): BitWriter {
  const bytes: number[] = []
  let free = 0
  return {
    bits(value, width) {
      for (let bit = width - 1; bit >= 0; bit--) {
        if (free === 0) {
          bytes.push(0)
          free = 8
        }
        free -= 1
        bytes[bytes.length - 1]! |= (Math.floor(value / 2 ** bit) % 2) << free
      }
    },
    bytes: () => bytes,
  }
}

export function bitReader(bytes: Uint8Array): BitReader {
  let at = 0
  return {
    bits(width) {
      let value = 0
      for (const end = at + width; at < end; at++) {
        const byte = bytes[at >> 3]
        if (byte === undefined) throw new RangeError('The bytes end inside a number')
        value = value * 2 + ((byte >> (7 - (at & 7))) & 1)
      }
      return value
    },
    nextByte: () => Math.ceil(at / 8),
  }
}
