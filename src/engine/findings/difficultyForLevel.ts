import type { Finding } from '#engine/report.ts'
import { DIFFICULTY_BANDS } from '#engine/shape/difficulty.ts'
import { say } from '#words/said.ts'
import { easeDifficulty } from './easeDifficulty.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, ofRide } from './finding.ts'

/** A class too hard for the level it is offered at, with its two biggest reasons and the edits that ease them. */
export function difficultyForLevel(facts: Facts): Finding[] {
  const { ride, difficulty } = facts
  if (facts.blocks.length === 0 || difficulty.level[ride.level] !== 'above') return []
  const [, to] = DIFFICULTY_BANDS[ride.level]
  return [
    ofRide({
      rule: 'difficultyForLevel',
      severity: 'hint',
      text: say('checksRide.difficultyForLevel', {
        points: difficulty.points,
        level: ride.level,
        most: to,
        reasons: difficulty.reasons.map(({ text }) => text),
      }),
      why: COMMON_PRACTICE,
      amount: difficulty.points - to,
      fixes: difficulty.reasons.map(({ part }) => easeDifficulty(facts, part)),
    }),
  ]
}
