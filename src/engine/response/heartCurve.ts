import { cutAt, isConstant, type Quadratic, quadraticAt, scaled, startingAt } from '#engine/demand/quadratic.ts'
import type { Ridden } from '#engine/demand/ridden.ts'
import type { Seconds } from '#units/units.ts'
import { type Relaxation, relaxedArea, relaxedAt, relaxTowards, turningPoints } from './relaxation.ts'

/** The predicted heart rate of one rider, as a share (0–1) of their reserve. */
export interface HeartCurve {
  pieces: Relaxation[]
  /** Where the curve is highest. */
  maximum: { at: Seconds; share: number }
  /** Time-weighted mean share. */
  mean: number
}

type Pulsed = Pick<Ridden, 'from' | 'to' | 'share'> & Partial<Pick<Ridden, 'standing'>>

/**
 * Heart rate as a first-order response to the share of the oxygen reserve asked for, with what
 * standing adds, capped at all of it, starting at rest. One exact exponential a span (two where a cadence ramp
 * passes the cap). Over a gap between spans it stands still, and the gap counts in no figure.
 *
 * @param lift what standing adds, as a share of the reserve
 */
export function heartCurve(ridden: readonly Pulsed[], tau: Seconds, lift = 0, start = 0): HeartCurve {
  const pieces: Relaxation[] = []
  const maximum = { at: ridden[0]?.from ?? 0, share: start }
  let value = start
  let area = 0
  let length = 0
  for (const { from, to, share, standing } of ridden) {
    for (const { target, from: begin, to: end } of cappedTargets(standing ? scaled(share, 1, lift) : share, from, to)) {
      const piece = relaxTowards(target, value, begin, end, tau)
      if (!isConstant(target)) for (const at of turningPoints(piece)) see(maximum, at, relaxedAt(piece, at))
      value = relaxedAt(piece, end)
      see(maximum, end, value)
      area += relaxedArea(piece)
      length += end - begin
      pieces.push(piece)
    }
  }
  return { pieces, maximum, mean: length > 0 ? area / length : start }
}

function see(maximum: HeartCurve['maximum'], at: Seconds, share: number): void {
  if (share <= maximum.share) return
  maximum.at = at
  maximum.share = share
}

/** Index of the piece a moment lies in, by halving; the nearest end outside. */
export function indexAt(pieces: readonly { from: Seconds; to: Seconds }[], at: Seconds): number {
  let low = 0
  let high = pieces.length - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if (at < pieces[middle]!.to) high = middle
    else low = middle + 1
  }
  return low
}

interface Target {
  from: Seconds
  to: Seconds
  target: Quadratic
}

function cappedTargets(share: Quadratic, from: Seconds, to: Seconds): Target[] {
  if (isConstant(share)) return [{ from, to, target: share[0] > 1 ? [1, 0, 0] : share }]
  const cuts = cutAt(share, [1], to - from)
  return cuts.slice(1).map((end, i) => {
    const start = cuts[i]!
    const over = quadraticAt(share, (start + end) / 2) > 1
    return {
      from: from + start,
      to: i === cuts.length - 2 ? to : from + end,
      target: over ? [1, 0, 0] : startingAt(share, start),
    }
  })
}
