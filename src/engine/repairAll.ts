import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { Ride } from '#plan/model.ts'
import { computeRide } from './computeRide.ts'

/**
 * The first repair of each of these findings, one after another and as one change. The ride is computed anew after each,
 * so that a finding an earlier repair has cleared is left alone, and one it has moved is repaired as it then stands.
 * Cost: one computation of the ride for each finding.
 */
export function repairAll(findingIds: readonly string[]): Command {
  const count = findingIds.length
  return makeCommand(`Repaired ${count} findings`, (ride) => repaired(ride, new Set(findingIds)))
}

function repaired(ride: Ride, left: Set<string>): Ride {
  let now = ride
  for (;;) {
    const next = computeRide(now).findings.find(({ id, fixes }) => left.has(id) && fixes.length > 0)
    if (!next) return now
    left.delete(next.id)
    now = next.fixes[0]!.command.apply(now)
  }
}
