import type { PlayedBlock } from '#engine/played.ts'
import { isCatchBreath } from '#engine/recovery/catchBreath.ts'
import type { Bout } from '#engine/recovery/findBouts.ts'
import { HANDBOOK_SOURCE, handbookRest } from '#engine/recovery/handbookRest.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Block } from '#plan/model.ts'
import { holdsTempo } from '#plan/songs/beatGrid.ts'
import { sayLength } from '#plan/words.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Counts, Seconds } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, fix, inQuotes, type Noticed, quoted } from './finding.ts'
import { lengthFix } from './fixes/lengthFix.ts'

/** Debts under half a second are the beat's rounding. */
const SMALLEST_DEBT: Seconds = 0.5

/** What is short by less than this share of the need is told to nobody: no leader times a recovery more finely (common practice). */
const SMALLEST_SHARE = 0.1

/** A ramp that only touches hard effort is no bout; the handbook's shortest row starts here. */
const SHORTEST_BOUT: Seconds = 5

/** Hard bouts whose recovery is shorter than it should be. */
export function recoveryDebts(facts: Facts): Finding[] {
  return facts.recovery.bouts.flatMap((bout) => {
    if (!isWorthTelling(bout) || isCatchBreath(bout, facts.blocks, facts.rules)) return []
    const have = bout.have < SMALLEST_DEBT ? 'no recovery' : `${formatDuration(bout.have)} of recovery`
    const effort = bout.allOut ? 'all out' : `at effort ${formatNumber(bout.peak, 1)}`
    const text = `${nameOf(facts, bout)} is ${formatDuration(bout.workSeconds)} ${effort} with ${have} after it; ${formatDuration(bout.need)} is needed.`
    const noticed: Noticed = {
      rule: 'recoveryDebt',
      severity: 'warning',
      text,
      why: sourceOf(bout),
      amount: bout.debt,
      fixes: () => [lengthen(facts, bout), takeFromNext(facts, bout)],
    }
    return [atBlock(facts, bout.toBlock, noticed, bout.from)]
  })
}

const isWorthTelling = ({ debt, need, workSeconds }: Bout): boolean =>
  debt >= Math.max(SMALLEST_DEBT, SMALLEST_SHARE * need) && workSeconds >= SHORTEST_BOUT

const nameOf = (facts: Facts, { fromBlock, toBlock }: Bout): string =>
  fromBlock === toBlock ? quoted(facts, fromBlock) : `${quoted(facts, fromBlock)} to ${quoted(facts, toBlock)}`

function sourceOf(bout: Bout): string {
  if (!bout.allOut || !handbookRest(bout.workSeconds)) return COMMON_PRACTICE
  return `${HANDBOOK_SOURCE} (times and ratios seen in a public copy)`
}

/** Moves the end of the recovery into the block after it, so that their song stays as long. */
function takeFromNext(facts: Facts, bout: Bout): Fix | undefined {
  const { blocks, sections } = facts
  const rest = recoveryBlock(facts, bout)
  const next = rest && blocks[rest.index + 1]
  if (!next || rest.set || next.set || next.section !== rest.section || rest.block.locked || next.block.locked) return undefined
  const { eight } = sections[rest.section]!.unit
  if (!('counts' in rest.block.length && 'counts' in next.block.length)) return undefined
  const counts = Math.max(1, missingEights(rest, bout, eight)) * eight
  const [longer, shorter] = [rest.block.length.counts + counts, next.block.length.counts - counts]
  // At least as much has to be left of the next one as it gives.
  if (shorter < counts) return undefined
  const [here, there] = [inQuotes(rest.block), inQuotes(next.block)]
  const size = sayLength({ counts }, eight)
  return fix(`Give ${here} ${size} of ${there}`, `Gave ${here} ${size} of ${there}`, (ride) =>
    editBlock(
      editBlock(ride, rest.block.id, (block) => ({ ...block, length: { counts: longer } })),
      next.block.id,
      (block) => ({ ...block, length: { counts: shorter } }),
    ),
  )
}

/** The block right after a bout, where it is an easy one; blocks a crossfade swallows are no recovery. */
function recoveryBlock({ blocks, rules }: Facts, bout: Bout): PlayedBlock | undefined {
  let after = bout.toBlock + 1
  while (after < blocks.length && blocks[after]!.to <= blocks[after]!.from) after++
  const played = blocks[after]
  return played && bout.have > 0 && isEasy(played.block, rules.recoveryEffort) ? played : undefined
}

/** Whole eights that the recovery is short of. */
function missingEights({ from, to, block }: PlayedBlock, bout: Bout, eight: Counts): number {
  const perCount = (to - from) / ('counts' in block.length ? block.length.counts : 1)
  return Math.ceil((bout.debt - SMALLEST_DEBT) / (perCount * eight))
}

/** Makes the recovery block right after the bout long enough, in whole eights under a song. */
function lengthen(facts: Facts, bout: Bout): Fix | undefined {
  const { ride, blocks, sections } = facts
  const played = recoveryBlock(facts, bout)
  if (!played) return undefined
  // A part that is played in other rounds too is only lengthened for a bout of the same set.
  if (played.set?.set !== blocks[bout.toBlock]!.set?.set) return undefined
  const { eight } = sections[played.section]!.unit
  // Where the tempo changes or beats are over or missing, rounds that move along the song last another time, and a recovery may come out shorter.
  const { grid } = ride.sections[played.section]!.song ?? {}
  if (played.set && grid && (grid.odd !== undefined || !holdsTempo(grid))) return undefined
  // The last block of a song that is full has nowhere to go.
  const { open, blocks: own, counts } = sections[played.section]!
  if (played.index === own.to - 1 && counts && !(open > 0)) return undefined
  if (!('counts' in played.block.length)) return lengthFix(played.block, Math.ceil(bout.debt), eight)
  return lengthFix(played.block, Math.max(1, missingEights(played, bout, eight)) * eight, eight)
}

const isEasy = ({ effort }: Block, level: number): boolean => Math.max(effort.from, effort.to) <= level
