import type { PlayedBlock } from '#engine/played.ts'
import type { Effort, Seconds } from '#units/units.ts'
import type { Bout } from './findBouts.ts'

/** A breath caught inside a run of work, in seconds (common practice). */
const BREATH: { least: Seconds; most: Seconds } = { least: 5, most: 12 }

/**
 * Whether what follows a bout only lets riders catch their breath before the work goes on: it is not meant as a recovery and
 * not judged as one. The run's last bout is.
 */
export function isCatchBreath(bout: Bout, blocks: readonly PlayedBlock[], levels: { recoveryEffort: Effort; workEffort: Effort }): boolean {
  if (bout.have < BREATH.least || bout.have > BREATH.most) return false
  let next = bout.toBlock + 1
  for (; next < blocks.length && isEasyOrGone(blocks[next]!, levels.recoveryEffort); next++)
    if (isMeantToRecover(blocks[next]!)) return false
  return next < blocks.length && blocks[next]!.block.effort.from >= levels.workEffort
}

/** What is planned as a recovery is judged as one, however short. */
const isMeantToRecover = ({ block, from, to }: PlayedBlock): boolean =>
  to > from && (block.terrain === 'recover' || block.terrain === 'flush')

const isEasyOrGone = ({ block, from, to }: PlayedBlock, level: Effort): boolean =>
  to <= from || Math.max(block.effort.from, block.effort.to) <= level
