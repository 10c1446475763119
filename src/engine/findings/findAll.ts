import type { Finding } from '#engine/report.ts'
import type { Facts } from './facts.ts'

/** One rule: what it notices of a ride, in the order of the ride. */
export type Rule = (facts: Facts) => Finding[]

const RULES: readonly Rule[] = []

/** Every rule's findings in the order of the ride clock. */
export function findAll(facts: Facts): Finding[] {
  return RULES.flatMap((rule) => rule(facts)).sort((a, b) => a.at - b.at)
}
