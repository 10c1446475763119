import type { Constants } from '#engine/constants.ts'
import type { Level } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { handbookRest } from './handbookRest.ts'

/** Least recovery after any hard bout, by the level of the class. */
function recoveryFloor(level: Level, rules: Constants): Seconds {
  switch (level) {
    case 'beginner':
      return rules.recoveryFloorBeginner
    case 'mixed':
      return rules.recoveryFloorMixed
    case 'advanced':
      return rules.recoveryFloorAdvanced
  }
}

/**
 * Easy seconds a hard bout asks for. Common practice: twice a short hardest bout, one and a
 * half times a longer one, once a hard one, never under the level's floor. An all-out bout
 * takes the low end of the handbook's range where the table reaches it.
 */
export function recoveryNeed(bout: { work: Seconds; peak: Effort; allOut: boolean }, level: Level, rules: Constants): Seconds {
  const floor = recoveryFloor(level, rules)
  const rest = bout.allOut ? handbookRest(bout.work) : undefined
  return Math.max(floor, rest?.low ?? bout.work * factorOf(bout, rules))
}

function factorOf({ work, peak }: { work: Seconds; peak: Effort }, rules: Constants): number {
  if (peak < rules.hardestEffort) return rules.recoveryHard
  // A bout cut to just the limit by the beat must not tip over it by a rounding error.
  return work <= rules.shortBoutSeconds + 1e-6 ? rules.recoveryShort : rules.recoveryLong
}
