/** A rider's heart rate between rest and maximum, beats a minute. */
export interface HeartRange {
  readonly rest: number
  readonly max: number
}

/**
 * Heart rate at a share (0–1) of the reserve: rest + share × (max − rest).
 * Source: Karvonen MJ, Kentala E, Mustala O, Ann Med Exp Biol Fenn 1957;35:307-315.
 */
export const heartRateAt = (share: number, { rest, max }: HeartRange): number => rest + share * (max - rest)
