import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { patched } from '#plan/edits.ts'
import { say } from '#words/said.ts'

/** Puts findings aside, because they are meant so; what was put aside longest ago is let go when the list is full. */
export function putAside(findingIds: readonly string[]): Command {
  return makeCommand(say('commands.hidChecks', { count: findingIds.length }), (ride) => {
    const { setAside = [] } = ride
    const more = findingIds.filter((id) => !setAside.includes(id))
    return more.length === 0 ? ride : { ...ride, setAside: [...setAside, ...more].slice(-MOST) }
  })
}

/** Lists a finding again. */
export function bringBack(findingId: string): Command {
  return makeCommand(say('commands.unhidCheck'), (ride) => {
    const left = ride.setAside?.filter((id) => id !== findingId)
    return left?.length === ride.setAside?.length ? ride : patched(ride, { setAside: left?.length ? left : undefined })
  })
}

/** As many as a document holds. */
const MOST = 500
