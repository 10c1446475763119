import type { PlayedBlock } from '#engine/played.ts'
import { isCatchBreath } from '#engine/recovery/catchBreath.ts'
import type { Bout } from '#engine/recovery/findBouts.ts'
import { handbookRest } from '#engine/recovery/handbookRest.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Block } from '#plan/model.ts'
import { lengthText, quotedItem } from '#plan/names.ts'
import { holdsTempo } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { type Said, say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, fix, type Noticed, quoted } from './finding.ts'
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
    const text = say('checksRide.recoveryDebt', {
      block: quoted(facts, bout.fromBlock),
      last: bout.fromBlock === bout.toBlock ? undefined : quoted(facts, bout.toBlock),
      work: bout.workSeconds,
      at: bout.allOut ? null : bout.peak,
      have: bout.have < SMALLEST_DEBT ? null : bout.have,
      need: bout.need,
    })
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

const sourceOf = ({ allOut, workSeconds }: Bout): Said =>
  allOut && handbookRest(workSeconds) ? say('sources.workToRest') : COMMON_PRACTICE

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
  const said = { block: quotedItem(rest.block), next: quotedItem(next.block), length: lengthText({ counts }, eight) }
  return fix(say('checksRide.giveFromNext', said), say('checksRide.gaveFromNext', said), (ride) =>
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
