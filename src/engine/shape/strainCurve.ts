import type { Constants } from '#engine/constants.ts'
import type { EffortLine } from '#engine/recovery/effortLines.ts'
import type { Effort, Seconds } from '#units/units.ts'

/**
 * Exponential pieces: value(t) = target(t) + (start − targetFrom) e^(−(t−from)/tau), target
 * straight from targetFrom to targetTo. Under a ramp of effort the target is that ramp delayed
 * by tau, which is the exact solution. Where nothing is planned a piece is held. Pieces adjoin from 0 to the end of the ride; read them
 * with `strainAt` (engine/shape/strainCurve.ts).
 */
export interface StrainCurve {
  readonly pieces: readonly {
    readonly from: Seconds
    readonly to: Seconds
    readonly start: number
    readonly targetFrom: number
    readonly targetTo: number
    readonly tau: Seconds
    readonly held?: true
  }[]
  readonly maximum: { readonly at: Seconds; readonly value: number }
}

type Piece = StrainCurve['pieces'][number]

/**
 * Strain: effort followed with a lag, 40 s on the way up and 70 s on the way down; a measure
 * of shape, never a heart rate. S′ = (effort − S) ÷ τ from 0 at the start, solved in closed
 * form. Where effort is a straight line the solution runs towards that line delayed by τ, so
 * the pieces' targets are the delayed lines. Each piece rises or falls throughout, hence the
 * maximum stands at a boundary. Between blocks the last effort goes on; before the first and
 * after the last there is none. Where nothing is planned strain is held as it was.
 *
 * @param end the end of the ride, to which the curve is drawn
 * @param unplanned stretches of which the plan says nothing, in order; each begins where a line ends
 */
export function strainCurve(
  lines: readonly EffortLine[],
  end: Seconds,
  rules: Constants,
  unplanned: readonly { from: Seconds; to: Seconds }[] = [],
): StrainCurve {
  const pieces: Piece[] = []
  const maximum = { at: 0, value: 0 }
  let value = 0
  let clock = 0
  const follow = (from: Seconds, to: Seconds, start: Effort, finish: Effort): void => {
    for (const piece of piecesOf(from, to, start, finish, value, rules)) {
      pieces.push(piece)
      value = valueAt(piece, piece.to)
      if (value > maximum.value) {
        maximum.at = piece.to
        maximum.value = value
      }
    }
  }
  let next = 0
  const hold = (): void => {
    while (next < unplanned.length && unplanned[next]!.from < clock) next++
    for (; unplanned[next]?.from === clock; next++) {
      const { from, to } = unplanned[next]!
      pieces.push({ from, to, start: value, targetFrom: value, targetTo: value, tau: rules.strainDown, held: true })
      clock = to
    }
  }
  let last = 0
  for (const line of lines) {
    hold()
    if (line.from > clock) follow(clock, line.from, last, last)
    follow(line.from, line.to, line.start, line.end)
    clock = line.to
    last = line.end
  }
  hold()
  if (end > clock) follow(clock, end, 0, 0)
  return { pieces, maximum }
}

/** Strain at a moment of the ride; 0 outside it. Cost: O(log pieces). */
export function strainAt({ pieces }: StrainCurve, at: Seconds): number {
  let low = 0
  let high = pieces.length - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if (pieces[middle]!.to < at) low = middle + 1
    else high = middle
  }
  const piece = pieces[low]
  return piece && at >= piece.from && at <= piece.to ? valueAt(piece, at) : 0
}

function valueAt({ from, to, start, targetFrom, targetTo, tau }: Piece, at: Seconds): number {
  const target = targetFrom + ((targetTo - targetFrom) * (at - from)) / (to - from)
  return target + (start - targetFrom) * Math.exp(-(at - from) / tau)
}

/**
 * When a piece that rises or falls through a level is at it: in closed form where its target stands still, else by halving
 * to a thousandth of a second.
 */
export function momentAt(piece: Piece, level: number): Seconds {
  const { from, to, start, targetFrom, targetTo, tau } = piece
  if (targetFrom === targetTo) return from + tau * Math.log((start - targetFrom) / (level - targetFrom))
  let [low, high] = [from, to]
  while (high - low > 1e-3) {
    const middle = (low + high) / 2
    if (valueAt(piece, middle) > level === start > level) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** One straight stretch of effort: a single piece, or two where falling strain meets a rising effort (or the reverse). */
function piecesOf(from: Seconds, to: Seconds, start: Effort, finish: Effort, value: number, rules: Constants): Piece[] {
  const slope = (finish - start) / (to - from)
  const gap = start - value
  const rising = gap > 0 || (gap === 0 && slope > 0)
  const tau = rising ? rules.strainUp : rules.strainDown
  const piece = (at: Seconds, until: Seconds, from0: number, lag: Seconds): Piece => {
    const delayed = (moment: Seconds): number => start + slope * (moment - from - lag)
    return { from: at, to: until, start: from0, targetFrom: delayed(at), targetTo: delayed(until), tau: lag }
  }
  if (gap * slope >= 0) return [piece(from, to, value, tau)]
  // gap(t) = slope·τ + (gap − slope·τ) e^(−t/τ) meets zero once.
  const meeting = from + tau * Math.log((slope * tau - gap) / (slope * tau))
  if (meeting >= to) return [piece(from, to, value, tau)]
  const first = piece(from, meeting, value, tau)
  return [first, piece(meeting, to, start + slope * (meeting - from), rising ? rules.strainDown : rules.strainUp)]
}
