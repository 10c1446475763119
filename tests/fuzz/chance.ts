/** Choices that a number decides: the same number, the same choices. */
export interface Chance {
  /** A whole number from 0 to below a limit. */
  below: (limit: number) => number
  pick: <T>(of: readonly T[]) => T
  /** True once in so many times. */
  oneIn: (times: number) => boolean
}

/** Mulberry32: small, even enough to choose with, and no use for secrets. */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const below = (limit: number) => Math.floor(next() * limit)
  return { below, pick: (of) => of[below(of.length)]!, oneIn: (times) => below(times) === 0 }
}
