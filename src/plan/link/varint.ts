/** Appends a whole number from 0 to 2⁵³ − 1, seven bits a byte, low bits first; the top bit says "more follows". */
export function writeVarint(bytes: number[], value: number): void {
  let rest = value
  while (rest >= 128) {
    bytes.push((rest % 128) + 128)
    rest = Math.floor(rest / 128)
  }
  bytes.push(rest)
}

/** Reads such a number at a position; undefined where the bytes end inside it or it is beyond 2⁵³ − 1. */
export function readVarint(bytes: Uint8Array, at: number): { value: number; next: number } | undefined {
  let value = 0
  for (let next = at, scale = 1; next < bytes.length && scale < 2 ** 53; next++, scale *= 128) {
    const byte = bytes[next]!
    value += (byte % 128) * scale
    if (byte < 128) return Number.isSafeInteger(value) ? { value, next: next + 1 } : undefined
  }
  return undefined
}
