import type { Seconds } from '#units/units.ts'
import type { StrainCurve } from './strainCurve.ts'

/** A peak of strain that stands out from what lies between it and the next higher one. */
export interface Wave {
  at: Seconds
  value: number
  /** Height over the higher of the two lowest points that part it from higher ground. */
  prominence: number
}

/** Least prominence of a wave (common practice). */
const STANDS_OUT = 2

/**
 * The waves of a class. Each piece of the strain curve rises or falls throughout, so its
 * boundaries hold every peak and trough. Cost: pieces × waves at most.
 */
export function wavesOf({ pieces }: StrainCurve): Wave[] {
  const points = pieces.map(({ from, start }) => ({ at: from, value: start }))
  const last = pieces.at(-1)
  if (last) points.push({ at: last.to, value: endOf(last) })
  return points.flatMap(({ at, value }, i) => {
    const before = points[i - 1]?.value ?? Number.NEGATIVE_INFINITY
    const after = points[i + 1]?.value ?? Number.NEGATIVE_INFINITY
    if (value <= before || value < after) return []
    const prominence = value - Math.max(lowestTowardsHigher(points, i, -1), lowestTowardsHigher(points, i, 1))
    return prominence >= STANDS_OUT ? [{ at, value, prominence }] : []
  })
}

function endOf({ from, to, start, targetFrom, targetTo, tau }: StrainCurve['pieces'][number]): number {
  return targetTo + (start - targetFrom) * Math.exp(-(to - from) / tau)
}

/** The lowest value on the way to higher ground in one direction, or to the end of the ride, where strain is nothing. */
function lowestTowardsHigher(points: readonly { value: number }[], peak: number, step: 1 | -1): number {
  let lowest = points[peak]!.value
  for (let i = peak + step; i >= 0 && i < points.length; i += step) {
    const { value } = points[i]!
    if (value > points[peak]!.value) return lowest
    lowest = Math.min(lowest, value)
  }
  return 0
}
