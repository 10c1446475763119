import { itemOf } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { runAndSay } from '#features/drafting/draftActions.ts'
import type { Command } from '#plan/commands/command.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { newItems } from '#plan/newItems.ts'

/**
 * Does it to what is chosen, says what it did, and goes to where one goes on.
 *
 * @param next what the command made, the same item, or the neighbour of what is gone
 */
export function carryOut(on: DraftGround, command: Command, next: 'made' | 'same' | 'neighbour'): void {
  const { store, tools } = on
  const item = itemOf(on)
  const { ride, selection } = store.getState()
  if (!ride || !item) return
  const done = runAndSay(store, command, item.id)
  const state = store.getState()
  const made = done && next === 'made' ? newItems(ride, state.ride!) : []
  const goTo = made[0] ?? (next === 'neighbour' ? neighbourOf(ride, item.ids) : item.id)
  const { sectionId } = selection
  if (made.length > 0) state.selectItems(made)
  else if (goTo === undefined && sectionId !== null) state.selectSection(sectionId)
  else if (goTo !== undefined && goTo !== item.id) state.selectItem(goTo)
  const target = goTo ?? sectionId
  if (target !== null) tools.focus(target)
}

/** The block after those that go, else the one before them; undefined in a ride that has no other. */
function neighbourOf(ride: Ride, ids: readonly string[]): string | undefined {
  const gone = new Set(ids)
  const blocks = ride.sections.flatMap((section) =>
    section.blocks.flatMap((item) =>
      (isSet(item) ? item.parts : [item]).map(({ id }) => ({ id, goes: gone.has(id) || gone.has(item.id) })),
    ),
  )
  const last = blocks.findLastIndex(({ goes }) => goes)
  return (blocks.slice(last + 1)[0] ?? blocks.slice(0, last).findLast(({ goes }) => !goes))?.id
}
