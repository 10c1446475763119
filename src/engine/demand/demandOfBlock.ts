import type { Block } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { EFFORT_OF_RESERVE, lineOf, reserveOfEffort, stretchOf } from './effortOfReserve.ts'
import { cutAt, isConstant, type Quadratic, quadraticAt, scaled, startingAt } from './quadratic.ts'
import type { Ridden } from './ridden.ts'

/** Demanded effort over a stretch of time: a closed form from `from` to `to`. */
export interface DemandPiece {
  from: Seconds
  to: Seconds
  effort: Quadratic
}

/** Effort that standing adds, and a move while standing beyond it; to effort only, never to watts (common practice). */
const STANDING = { standing: 0.5, move: 0.3 } as const

export function standingBonus(block: Pick<Block, 'posture' | 'move'>): Effort {
  if (block.posture !== 'standing') return 0
  return STANDING.standing + (block.move === undefined ? 0 : STANDING.move)
}

const BOUNDS = EFFORT_OF_RESERVE.map(([share]) => share)

/** The effort a ridden span demands, cut where the mapping bends and where it reaches 10. */
export function demandPieces({ from, to, share }: Pick<Ridden, 'from' | 'to' | 'share'>, bonus: Effort): DemandPiece[] {
  const length = to - from
  if (isConstant(share)) return [{ from, to, effort: [effortWith(share[0], bonus), 0, 0] }]
  const cuts = cutAt(share, bonus === 0 ? BOUNDS : [...BOUNDS, reserveOfEffort(10 - bonus)], length)
  return cuts.slice(1).map((end, i) => {
    const start = cuts[i]!
    const middle = quadraticAt(share, (start + end) / 2)
    const { from: bound, base, rise } = lineOf(stretchOf(middle))
    const capped = base + rise * (middle - bound) + bonus > 10
    const effort: Quadratic = capped ? [10, 0, 0] : scaled(startingAt(share, start), rise, base - rise * bound + bonus)
    return { from: from + start, to: i === cuts.length - 2 ? to : from + end, effort }
  })
}

/** Effort of a share of the reserve with what standing adds, 10 at most. */
export function effortWith(share: number, bonus: Effort): Effort {
  const { from, base, rise } = lineOf(stretchOf(share))
  return Math.min(10, base + rise * (share - from) + bonus)
}

/** Time-weighted mean of pieces. */
export function meanDemand(pieces: readonly DemandPiece[]): Effort {
  if (pieces.length === 1 && isConstant(pieces[0]!.effort)) return pieces[0]!.effort[0]
  let area = 0
  for (const { from, to, effort } of pieces) {
    const t = to - from
    area += t * (effort[0] + t * (effort[1] / 2 + (t * effort[2]) / 3))
  }
  const length = pieces.at(-1)!.to - pieces[0]!.from
  return length > 0 ? area / length : pieces[0]!.effort[0]
}

/** Demanded effort at a moment inside the pieces. */
export function demandAt(pieces: readonly DemandPiece[], at: Seconds): Effort {
  const piece = pieces.find((candidate) => at < candidate.to) ?? pieces.at(-1)!
  return quadraticAt(piece.effort, at - piece.from)
}
