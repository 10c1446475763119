import { itemOf } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { runAndSay } from '#features/drafting/draftActions.ts'
import type { Command } from '#plan/commands/command.ts'
import type { Ride } from '#plan/model.ts'

/** Makes a command for the block or set that is meant, or for all that are selected with it, says what it did, and stays on it. */
export function change(on: DraftGround, make: (ride: Ride, id: string, ids: readonly string[]) => Command | null): void {
  const { ride } = on.store.getState()
  const item = itemOf(on)
  const command = ride && item && make(ride, item.id, item.ids)
  if (!command) return
  runAndSay(on.store, command, item.id)
  on.tools.focus(item.id)
}
