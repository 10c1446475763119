import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { patched } from '#plan/edits.ts'

/** Puts a finding aside, because it is meant so; what was put aside longest ago is let go when the list is full. */
export function putAside(findingId: string): Command {
  return makeCommand('Put a finding aside', (ride) => {
    const { setAside = [] } = ride
    return setAside.includes(findingId) ? ride : { ...ride, setAside: [...setAside, findingId].slice(-MOST) }
  })
}

/** Lists a finding again. */
export function bringBack(findingId: string): Command {
  return makeCommand('Brought a finding back', (ride) => {
    const left = ride.setAside?.filter((id) => id !== findingId)
    return left?.length === ride.setAside?.length ? ride : patched(ride, { setAside: left?.length ? left : undefined })
  })
}

/** As many as a document holds. */
const MOST = 500
