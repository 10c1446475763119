import type { PlayedBlock } from '#engine/played.ts'
import type { Effort, Seconds, Setting, Watts } from '#units/units.ts'
import { type DemandPiece, demandPieces, meanDemand, standingBonus } from './demandOfBlock.ts'
import { areaUnder } from './quadratic.ts'
import type { Ridden } from './ridden.ts'

/** What one played block asks of one rider. */
export interface BlockDemand {
  pieces: DemandPiece[]
  /** Time-weighted mean effort and power. */
  mean: Effort
  watts: Watts
  /** Where the rider's knob stands, in the bike's unit. */
  setting: Setting
  source: Ridden['source']
}

/** Demand of every played block; null where no cadence is known, and for a block that a crossfade leaves no time. */
export function blockDemands(
  ridden: readonly Ridden[],
  blocks: readonly PlayedBlock[],
  settingOf: (played: PlayedBlock) => Setting,
): (BlockDemand | null)[] {
  const demands = Array<BlockDemand | null>(blocks.length).fill(null)
  for (const span of ridden) {
    if (!span.own || span.source === 'intent') continue
    const played = blocks[span.block]!
    const pieces = demandPieces(span, span.turning ? standingBonus(played.block) : 0)
    const length = span.to - span.from
    const before = demands[span.block]
    const watts = length > 0 ? areaUnder(span.watts, length) / length : span.watts[0]
    // A block whose tempo moves has several spans.
    if (before) addTo(before, pieces, watts, length)
    else demands[span.block] = { pieces, mean: meanDemand(pieces), watts, setting: settingOf(played), source: span.source }
  }
  return demands
}

/** The demand of a block with that of its next stretch. */
function addTo(demand: BlockDemand, pieces: readonly DemandPiece[], watts: Watts, length: Seconds): void {
  const before = demand.pieces.at(-1)!.to - demand.pieces[0]!.from
  const share = length / (before + length || 1)
  demand.pieces.push(...pieces)
  demand.mean += (meanDemand(pieces) - demand.mean) * share
  demand.watts += (watts - demand.watts) * share
}
