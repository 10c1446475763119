import type { PlayedBlock } from '#engine/played.ts'
import type { Effort, Seconds } from '#units/units.ts'
import type { DemandPiece } from './demandOfBlock.ts'
import { areaUnder, cutAt, isConstant, type Quadratic, quadraticAt } from './quadratic.ts'

/** An unbroken stretch on which demand and intent part by more than the limit, the same way throughout. */
interface Apart {
  from: Seconds
  to: Seconds
  /** 1 where the bike asks for more than the plan, −1 where for less. */
  sign: 1 | -1
  /** Area between the gap and the limit, effort × seconds. */
  excess: number
}

type Intended = Pick<PlayedBlock, 'from' | 'to'> & { block: Pick<PlayedBlock['block'], 'effort'> }

/** Demand less intent over a block, piece by piece. */
export function gapPieces(played: Intended, demand: readonly DemandPiece[]): DemandPiece[] {
  const { from, to } = played.block.effort
  const slope = played.to > played.from ? (to - from) / (played.to - played.from) : 0
  return demand.map((piece) => {
    const intent = from + slope * (piece.from - played.from)
    return { ...piece, effort: [piece.effort[0] - intent, piece.effort[1] - slope, piece.effort[2]] as Quadratic }
  })
}

/** The stretches of a block on which the gap is beyond the limit, in order. */
export function apartWithin(gap: readonly DemandPiece[], limit: Effort): Apart[] {
  const found: Apart[] = []
  for (const { from, to, effort } of gap) {
    if (isConstant(effort)) {
      const size = Math.abs(effort[0])
      if (size > limit + TOUCHING) join(found, { from, to, sign: effort[0] > 0 ? 1 : -1, excess: (size - limit) * (to - from) })
      continue
    }
    const cuts = cutAt(effort, [-limit, limit], to - from)
    for (let i = 1; i < cuts.length; i++) {
      const middle = quadraticAt(effort, (cuts[i - 1]! + cuts[i]!) / 2)
      if (Math.abs(middle) <= limit + TOUCHING) continue
      const sign = middle > 0 ? 1 : -1
      const area = areaUnder(effort, cuts[i]!) - areaUnder(effort, cuts[i - 1]!)
      join(found, {
        from: i === 1 ? from : from + cuts[i - 1]!,
        to: i === cuts.length - 1 ? to : from + cuts[i]!,
        sign,
        excess: sign * area - limit * (cuts[i]! - cuts[i - 1]!),
      })
    }
  }
  return found
}

/** A gap of exactly the limit is no finding, whatever the last binary digit says. */
export const TOUCHING = 1e-9

function join(found: Apart[], next: Apart): void {
  const last = found.at(-1)
  if (last !== undefined && last.sign === next.sign && last.to === next.from) {
    last.to = next.to
    last.excess += next.excess
  } else found.push(next)
}

/** A stretch apart that may run over several blocks, and the blocks it touches. */
interface ApartRun extends Apart {
  /** Indices into the report's blocks. */
  blocks: number[]
}

/** Joins the stretches of neighbouring blocks that follow each other without a break. */
export function apartRuns(blocks: readonly { index: number; apart: readonly Apart[] }[]): ApartRun[] {
  const runs: ApartRun[] = []
  for (const { index, apart } of blocks) {
    for (const stretch of apart) {
      const last = runs.at(-1)
      if (last !== undefined && last.sign === stretch.sign && last.to === stretch.from) {
        last.to = stretch.to
        last.excess += stretch.excess
        last.blocks.push(index)
      } else runs.push({ ...stretch, blocks: [index] })
    }
  }
  return runs
}
