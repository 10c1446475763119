import type { Finding, Fix } from '#engine/report.ts'
import type { StandingRun } from '#engine/shape/standingRuns.ts'
import { quotedItem } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Standing or hovering for longer than riders should without sitting down. */
export function longStanding(facts: Facts): Finding[] {
  const limit = facts.rules.longestStanding
  return facts.standing.flatMap((run) => {
    const length = run.to - run.from
    if (length <= limit + 1e-6) return []
    const noticed: Noticed = {
      rule: 'longStanding',
      severity: 'warning',
      text: say('checksRide.longStanding', { seconds: length, most: limit }),
      why: COMMON_PRACTICE,
      amount: length - limit,
      fixes: () => [seat(facts, run)],
    }
    return [atBlock(facts, run.fromBlock, noticed)]
  })
}

/** Seats the block that leaves the shortest of the two halves' longer one. */
function seat({ blocks }: Facts, run: StandingRun): Fix {
  const longerHalf = (index: number): Seconds => Math.max(blocks[index]!.from - run.from, run.to - blocks[index]!.to)
  let best = run.fromBlock
  for (let index = run.fromBlock; index <= run.toBlock; index++) if (longerHalf(index) < longerHalf(best)) best = index
  const { block } = blocks[best]!
  const hands = block.hands === 'ends' ? { hands: 'wide' as const } : {}
  const here = { block: quotedItem(block) }
  return blockFix(block, say('checks.keepSeated', here), say('checks.madeSeated', here), { posture: 'seated', ...hands })
}
