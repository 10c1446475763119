import type { Rider } from '#plan/riderModel.ts'
import type { Seconds } from '#units/units.ts'
import type { HeartRange } from './heartReserve.ts'
import type { Relaxation } from './relaxation.ts'
import { secondsBetween } from './secondsBetween.ts'

/** Time by a rider's own thresholds; null where a threshold that bounds it is not known. */
export interface ByThreshold {
  under: Seconds | null
  between: Seconds | null
  over: Seconds | null
}

/** Seconds the predicted heart rate spends under the first threshold, between the two, and over the second; undefined without either. */
export function secondsByThreshold(
  pieces: readonly Relaxation[],
  { firstThresholdHr: first, secondThresholdHr: second }: Pick<Rider, 'firstThresholdHr' | 'secondThresholdHr'>,
  { rest, max }: HeartRange,
): ByThreshold | undefined {
  if (first === undefined && second === undefined) return undefined
  const shares = [first, second].filter((beats) => beats !== undefined).map((beats) => (beats - rest) / (max - rest))
  const seconds = secondsBetween(pieces, shares)
  return {
    under: first === undefined ? null : seconds[0]!,
    between: shares.length === 2 ? seconds[1]! : null,
    over: second === undefined ? null : seconds.at(-1)!,
  }
}
