import { RULES } from '#plan/messages.ts'
import type { Rule } from './rule.ts'

/** A rider's highest heart rate is above the resting one. */
export const ridersInOrder: Rule = ({ riders = [] }) =>
  riders.flatMap(({ restingHr, maxHr }, r) =>
    maxHr === undefined || maxHr > restingHr ? [] : [{ path: ['riders', r, 'maxHr'], predicate: RULES.maxHrTooLow, found: maxHr }],
  )
