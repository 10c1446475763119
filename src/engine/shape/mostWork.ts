import type { Constants } from '#engine/constants.ts'
import type { Level } from '#plan/model.ts'

/** The share of a class's riding, in per cent, that may be at working effort: by its level, as the house rules have it. */
export function mostWork(level: Level, rules: Constants): number {
  switch (level) {
    case 'beginner':
      return rules.workShareBeginner
    case 'mixed':
      return rules.workShareMixed
    case 'advanced':
      return rules.workShareAdvanced
  }
}
