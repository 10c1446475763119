/** Numbers from 0 up to 1, the next at every call. */
export type Random = () => number

/**
 * A row of numbers that one seed gives and no other: Mulberry32, a public-domain generator of
 * 32 bits of state. Good enough to choose between equals, and the same on every machine.
 *
 * @param seed a whole number; only its lowest 32 bits count
 */
export function seededRandom(seed: number): Random {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** One of a list that is not empty. */
export const pick = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)]!
