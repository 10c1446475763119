import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { Ride } from '#plan/model.ts'
import { say } from '#words/said.ts'
import { computeRide } from './computeRide.ts'

/**
 * The first repair of each of these findings, one after another and as one change. The ride is computed anew after each,
 * so that a finding an earlier repair has cleared is left alone, one it has moved is repaired as it then stands, and a
 * repair that would by now bring another trouble is left out.
 * Cost: a few computations of the ride for each finding.
 */
export function repairAll(findingIds: readonly string[]): Command {
  const count = findingIds.length
  return makeCommand(say('checks.fixedMany', { count }), (ride) => repaired(ride, new Set(findingIds)))
}

function repaired(ride: Ride, left: Set<string>): Ride {
  let now = ride
  let { findings } = computeRide(now)
  for (;;) {
    const next = findings.find(({ id }) => left.has(id))
    if (!next) return now
    left.delete(next.id)
    const [fix] = next.fixes
    if (!fix) continue
    now = fix.command.apply(now)
    findings = computeRide(now).findings
  }
}
