import type { Seconds, Watts } from '#units/units.ts'

/**
 * How long a constant power above critical power can be held: W′ ÷ (P − CP); without end at
 * or below it. Two-parameter model, valid for about 2–30 minutes.
 * Source: Monod H, Scherrer J, Ergonomics 1965;8(3):329-338.
 */
export function timeToExhaustion(watts: Watts, criticalPower: Watts, wPrime: number): Seconds {
  return watts > criticalPower ? wPrime / (watts - criticalPower) : Number.POSITIVE_INFINITY
}
