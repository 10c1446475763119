import { RULES } from '#plan/messages.ts'
import type { Rider } from '#plan/model.ts'
import type { Fault, Rule } from './rule.ts'

/** A rider's highest heart rate is above the resting one. */
export const ridersInOrder: Rule = ({ riders = [] }) => riderFaults(riders)

/** The same of riders by themselves. */
export const riderFaults = (riders: readonly Rider[]): Fault[] =>
  riders.flatMap(({ restingHr, maxHr }, r) =>
    maxHr === undefined || maxHr > restingHr ? [] : [{ path: ['riders', r, 'maxHr'], predicate: RULES.maxHrTooLow, found: maxHr }],
  )
