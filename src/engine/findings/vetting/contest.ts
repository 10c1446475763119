import type { Finding } from '#engine/report.ts'
import { type Trial, WEIGHT } from './tryOut.ts'

interface Contender {
  trial: Trial
  finding: Finding
  /** Its finding's place among all. */
  order: number
}

/**
 * Which of two repairs that would undo each other is offered: the one that clears both findings, else the weightier
 * finding's, else the earlier one's. The same whichever is asked about first.
 */
export function contest(one: Contender, other: Contender): Contender {
  const both = [one, other].sort((a, b) => WEIGHT[b.finding.severity] - WEIGHT[a.finding.severity] || a.order - b.order)
  return both.find(({ trial }) => both.every(({ finding }) => trial.clears(finding))) ?? both[0]!
}
