import type { Watts } from '#units/units.ts'

/** What a test gives of a rider: critical power, and the work capacity above it, W′, in joules. */
export interface Capacity {
  criticalPower: Watts
  wPrime: number
  /** Standard errors of the two; null where the test cannot tell. */
  error: { criticalPower: Watts; wPrime: number } | null
}

/** What a test came to, and what speaks against it. */
export type TestResult<Doubt, Refusal> = { ok: true; capacity: Capacity; doubts: Doubt[] } | { ok: false; reason: Refusal }

/** The capacities that people commonly have, in joules; common practice. */
const USUAL = { low: 5_000, high: 35_000 } as const

export const isUnusual = ({ wPrime }: Pick<Capacity, 'wPrime'>): boolean => wPrime < USUAL.low || wPrime > USUAL.high
