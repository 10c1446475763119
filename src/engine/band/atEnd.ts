import { scaled } from '#engine/demand/quadratic.ts'
import type { Ridden } from '#engine/demand/ridden.ts'
import { together, type Uncertainty } from './uncertainty.ts'

/** −1: a light bike under a strong rider; 1: a heavy one under a weak one. */
export type End = -1 | 1

/**
 * A span at one end of its band. Every estimate of a rider only grows with the bike's watts over the rider's
 * capacity, so a band is the same ride ridden at two ends of that one ratio. Errors of watts and capacity are
 * independent and count together; of the uptake, watts are only the part that goes into the pedals. Where no cadence is
 * known the rider gives what is asked, whatever the bike. The reserve's band is wide enough by its recoveries and
 * needs no margin.
 */
export function atEnd(span: Ridden, end: End, of: Uncertainty): Ridden {
  if (!span.turning) return span
  const { from, to, source, legs, uptake, watts, share } = span
  if (source === 'intent') return { ...span, watts: scaled(watts, 1 + end * Math.hypot(of.uptake, of.capacity)) }
  const off = of.watts[source]
  const half = (to - from) / 2
  const middle = uptake[0] + half * (uptake[1] + half * uptake[2])
  const pedals = middle > 0 ? 1 - legs / middle : 0
  return {
    ...span,
    watts: scaled(watts, 1 + end * Math.hypot(off, of.capacity)),
    share: scaled(share, 1 + end * together(pedals * off, of.uptake)),
  }
}
