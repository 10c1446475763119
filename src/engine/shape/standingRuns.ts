import { isJump } from '#engine/cadence/moves.ts'
import type { Placed, PlacedSection } from '#engine/timeline/layTimeline.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import type { Seconds } from '#units/units.ts'

/** An unbroken stretch out of the saddle, first and last block included. */
export interface StandingRun {
  fromBlock: number
  toBlock: number
  from: Seconds
  to: Seconds
}

/**
 * Unbroken stretches out of the saddle, standing or hovering. A lead-in carries the posture
 * of the block before, so it joins two standing blocks; an open tail ends the stretch, as do
 * jumps, which come down again and again.
 */
export function standingRuns(blocks: readonly Placed[], openTails: ReadonlySet<number>): StandingRun[] {
  const runs: StandingRun[] = []
  let run: StandingRun | undefined
  let section = -1
  for (const played of blocks) {
    if (played.rideTo <= played.rideFrom) continue
    if (played.section !== section) {
      if (openTails.has(section)) run = undefined
      section = played.section
    }
    if (!stands(played)) {
      run = undefined
      continue
    }
    if (run) {
      run.toBlock = played.index
      run.to = played.rideTo
    } else {
      run = { fromBlock: played.index, toBlock: played.index, from: played.rideFrom, to: played.rideTo }
      runs.push(run)
    }
  }
  return runs
}

/** Indices of the sections that end in an open tail. */
export function openSections(sections: readonly PlacedSection[]): Set<number> {
  return new Set(sections.flatMap(({ open }, index) => (open > 0 ? [index] : [])))
}

function stands({ block }: Placed): boolean {
  return isOutOfSaddle(block) && !(block.move && isJump(block.move.name))
}
