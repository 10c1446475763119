import type { Finding } from '#engine/report.ts'
import { DIFFICULTY_BANDS } from '#engine/shape/difficulty.ts'
import { joinWords } from '#plan/names.ts'
import { easeDifficulty } from './easeDifficulty.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, ofRide } from './finding.ts'

/** A class too hard for the level it is offered at, with its two biggest reasons and the edits that ease them. */
export function difficultyForLevel(facts: Facts): Finding[] {
  const { ride, difficulty } = facts
  if (facts.blocks.length === 0 || difficulty.level[ride.level] !== 'above') return []
  const [, to] = DIFFICULTY_BANDS[ride.level]
  const because = joinWords(difficulty.reasons.map(({ text }) => text))
  return [
    ofRide({
      rule: 'difficultyForLevel',
      severity: 'hint',
      text: `This class rates ${Math.round(difficulty.points)} of 100; a ${ride.level} class is looked for up to ${to}. Most of it is ${because}.`,
      why: COMMON_PRACTICE,
      amount: difficulty.points - to,
      fixes: difficulty.reasons.map(({ part }) => easeDifficulty(facts, part)),
    }),
  ]
}
