import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { runAndSay } from '#features/drafting/draftActions.ts'
import type { Command } from '#plan/commands/command.ts'

/**
 * Does it to a whole section, says so, and goes to where one goes on.
 *
 * @param next the copy behind it, or the neighbour of the one that is gone
 */
export function carryOutOnSection({ store, tools }: DraftGround, sectionId: string, command: Command, next: 'copy' | 'neighbour'): void {
  const { ride } = store.getState()
  if (!ride) return
  const index = ride.sections.findIndex((section) => section.id === sectionId)
  const neighbour = ride.sections[index + 1] ?? ride.sections[index - 1]
  const done = runAndSay(store, command, sectionId)
  const target = next === 'neighbour' ? neighbour?.id : done ? store.getState().ride!.sections[index + 1]?.id : sectionId
  if (target === undefined) return
  store.getState().selectSection(target)
  tools.focus(target)
}
