import { HANDBOOK_SOURCE, handbookRest } from '#engine/recovery/handbookRest.ts'
import type { Bout, Finding, Fix } from '#engine/report.ts'
import { holdsTempo } from '#plan/beatGrid.ts'
import type { Block } from '#plan/model.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Seconds } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, quoted } from './finding.ts'
import { lengthFix } from './fixes/lengthFix.ts'

/** Debts under half a second are the beat's rounding. */
const SMALLEST_DEBT: Seconds = 0.5

/** A ramp that only touches hard effort is no bout; the handbook's shortest row starts here. */
const SHORTEST_BOUT: Seconds = 5

/** Hard bouts whose recovery is shorter than it should be. */
export function recoveryDebts(facts: Facts): Finding[] {
  return facts.recovery.bouts.flatMap((bout) => {
    if (bout.debt < SMALLEST_DEBT || bout.workSeconds < SHORTEST_BOUT) return []
    const have = bout.have < SMALLEST_DEBT ? 'no recovery' : `${formatDuration(bout.have)} of recovery`
    const effort = bout.allOut ? 'all out' : `at effort ${formatNumber(bout.peak, 1)}`
    const text = `${nameOf(facts, bout)} is ${formatDuration(bout.workSeconds)} ${effort} with ${have} after it; ${formatDuration(bout.need)} is needed.`
    const noticed = {
      rule: 'recoveryDebt',
      severity: 'warning' as const,
      text,
      why: sourceOf(bout),
      amount: bout.debt,
      fixes: [lengthen(facts, bout)],
    }
    return [{ ...atBlock(facts, bout.toBlock, noticed), at: bout.from }]
  })
}

const nameOf = (facts: Facts, { fromBlock, toBlock }: Bout): string =>
  fromBlock === toBlock ? quoted(facts, fromBlock) : `${quoted(facts, fromBlock)} to ${quoted(facts, toBlock)}`

function sourceOf(bout: Bout): string {
  if (!bout.allOut || !handbookRest(bout.workSeconds)) return COMMON_PRACTICE
  return `${HANDBOOK_SOURCE} (times and ratios seen in a public copy)`
}

/** Makes the recovery block right after the bout long enough, in whole eights under a song. */
function lengthen({ ride, blocks, sections, rules }: Facts, bout: Bout): Fix | undefined {
  let after = bout.toBlock + 1
  // Blocks a crossfade swallows are no recovery.
  while (after < blocks.length && blocks[after]!.to <= blocks[after]!.from) after++
  const played = blocks[after]
  if (!played || bout.have <= 0 || !isEasy(played.block, rules.recoveryEffort)) return undefined
  // A part that is played in other rounds too is only lengthened for a bout of the same set.
  if (played.set?.set !== blocks[bout.toBlock]!.set?.set) return undefined
  const { eight } = sections[played.section]!.unit
  // Where the tempo changes, rounds that move along the song last another time, and a recovery may come out shorter.
  const { grid } = ride.sections[played.section]!.song ?? {}
  if (played.set && grid && !holdsTempo(grid)) return undefined
  // The last block of a song that is full has nowhere to go.
  const { open, blocks: own, counts } = sections[played.section]!
  if (after === own.to - 1 && counts && !(open > 0)) return undefined
  if (!('counts' in played.block.length)) return lengthFix(played.block, Math.ceil(bout.debt), eight)
  const perCount = (played.to - played.from) / played.block.length.counts
  const eights = Math.ceil((bout.debt - SMALLEST_DEBT) / (perCount * eight))
  return lengthFix(played.block, Math.max(1, eights) * eight, eight)
}

const isEasy = ({ effort }: Block, level: number): boolean => Math.max(effort.from, effort.to) <= level
