import type { Fix } from '#engine/report.ts'
import { type DifficultyFigures, type DifficultyPart, difficultyPoints } from '#engine/shape/difficulty.ts'
import { editBlocksOf, editSections } from '#plan/edits.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { fix } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'
import { lengthFix } from './fixes/lengthFix.ts'

/** What an edit that eases a class looks at. */
type Rated = Pick<Facts, 'blocks' | 'recovery' | 'rules' | 'difficulty' | 'sections' | 'standing'>

/** The edit that eases one part; undefined where no single one does. */
export function easeDifficulty(facts: Rated, part: DifficultyPart): Fix | undefined {
  switch (part) {
    case 'hardShare':
    case 'longestHard':
      return easeLongest(facts)
    case 'shortestRecovery':
      return lengthenShortest(facts)
    case 'fastestMove':
      return slowFastest(facts)
    case 'longestStanding':
      return sitInLongest(facts)
    case 'highestTurns':
    case 'changesPerMinute':
    case 'cadenceOutside':
    case 'doubleTimeShare':
      return undefined
  }
}

/** Points of a class with some figures changed. */
function pointsWith({ difficulty }: Rated, figures: Partial<DifficultyFigures>): number {
  return Object.values(difficultyPoints({ ...difficulty.figures, ...figures })).reduce((sum, points) => sum + points, 0)
}

/** Takes the longest hard block to one under hard; not where a class is so far over that one block changes nothing. */
function easeLongest(facts: Rated): Fix | undefined {
  const { blocks, recovery, rules, difficulty } = facts
  const bout = recovery.bouts.reduce((longest, one) => (one.workSeconds > longest.workSeconds ? one : longest), recovery.bouts[0]!)
  const { block, from, to, set } = blocks[bout.fromBlock]!
  // In a set the same block may be what another round's bout goes on with.
  if (set && set.set.rounds > 1) return undefined
  // The easy end of a ramp may be another bout's recovery.
  if (Math.min(block.effort.from, block.effort.to) <= rules.recoveryEffort) return undefined
  const all = blocks.reduce((sum, played) => sum + played.to - played.from, 0)
  if (pointsWith(facts, { hardShare: difficulty.figures.hardShare - Math.min(to - from, bout.workSeconds) / all }) >= difficulty.points)
    return undefined
  const level = rules.hardEffort - 1
  const said = { block: quotedItem(block), level }
  return blockFix(block, say('checksRide.planEffort', said), say('checksRide.plannedEffort', said), { effort: { from: level, to: level } })
}

/** Makes the shortest recovery longer by one phrase, or a quarter of a minute. */
function lengthenShortest({ blocks, recovery, sections, rules }: Rated): Fix | undefined {
  const bout = recovery.bouts.reduce((least, one) => (one.have < least.have ? one : least), recovery.bouts[0]!)
  const rest = blocks[bout.toBlock + 1]
  // More of it must not be more of something else that is hard.
  if (bout.have <= 0 || rest === undefined || rest.block.posture !== 'seated' || rest.strikesPerBeat === 2) return undefined
  if (Math.max(rest.block.effort.from, rest.block.effort.to) > rules.recoveryEffort) return undefined
  const { eight, phrase } = sections[rest.section]!.unit
  return lengthFix(rest.block, 'counts' in rest.block.length ? phrase : 15, eight)
}

/** Twice the counts for the fastest move, wherever it is done. */
function slowFastest({ blocks, difficulty }: Rated): Fix | undefined {
  const counts = difficulty.figures.fastestMove
  const shown = blocks.find(({ block }) => block.move?.counts === counts)
  if (counts === null || shown === undefined) return undefined
  const said = { counts, slower: 2 * counts }
  return fix(say('checksRide.slowMoves', said), say('checksRide.slowedMoves', said), (ride) =>
    editSections(ride, (section) =>
      editBlocksOf(section, (block) => (block.move?.counts === counts ? { ...block, move: { ...block.move, counts: 2 * counts } } : block)),
    ),
  )
}

/** Sits the last block of the longest standing, where riders sit after it anyway and no other stretch is as long. */
function sitInLongest(facts: Rated): Fix | undefined {
  const { blocks, standing, difficulty } = facts
  const [longest, second] = [...standing].sort((a, b) => b.to - b.from - (a.to - a.from))
  if (longest === undefined || (second && second.to - second.from >= longest.to - longest.from)) return undefined
  const next = blocks.find(({ index, from, to }) => index > longest.toBlock && to > from)
  if (next && next.block.posture !== 'seated') return undefined
  const { block, from, to } = blocks[longest.toBlock]!
  const left = Math.max(second ? second.to - second.from : 0, longest.to - longest.from - (to - from))
  if (pointsWith(facts, { longestStanding: left }) >= difficulty.points) return undefined
  const here = { block: quotedItem(block) }
  return blockFix(block, say('checks.keepSeated', here), say('checks.madeSeated', here), {
    posture: 'seated',
    ...(block.hands === 'ends' && { hands: 'wide' as const }),
  })
}
