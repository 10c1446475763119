import type { Seconds } from '#units/units.ts'

/**
 * How far the heart may rise in a long class at the same work: by 11 % of its rate from minute 15 to 45 in a hot room
 * (35 °C), by 2 % in a cool one (22 °C), at 59 % of the highest uptake with drinks (Med Sci Sports Exerc 2008;40(6),
 * “Effect of ambient temperature on cardiovascular drift”, doi 10.1249/MSS.0b013e3181666ed7); hardly at all where work
 * and recovery alternate (Colakoglu M et al., Sports 2018;6(3):98). What the room is like is not known, so the most of
 * it is part of the upper end of the band, and none of the middle.
 */
const DRIFT = { from: 15 * 60, to: 45 * 60, most: 0.11 } as const

/** The most the heart may have drifted by a second of the ride, as a share of its rate. */
export const driftAt = (at: Seconds): number =>
  (DRIFT.most * Math.min(DRIFT.to - DRIFT.from, Math.max(0, at - DRIFT.from))) / (DRIFT.to - DRIFT.from)

/** Its mean from the beginning to a second. */
export function meanDrift(end: Seconds): number {
  if (end <= DRIFT.from) return 0
  const rising = Math.min(end, DRIFT.to) - DRIFT.from
  const after = Math.max(0, end - DRIFT.to)
  return (driftAt(end) * (rising / 2 + after)) / end
}
