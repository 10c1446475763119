import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { ungroupSet } from '#plan/commands/ungroupSet.ts'
import { findBlock, findSet } from '#plan/places.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'

export const UNGROUP: DraftAction = {
  id: 'stage.ungroup',
  name: say('actions.expand'),
  does: say('actions.expandDo'),
  keys: ['U'],
  writes: true,
  inMenu: true,
  can: (on) => setIdOf(on) !== undefined,
  do: (on) => {
    const { ride, newId } = on.store.getState()
    const setId = setIdOf(on)
    if (ride && setId !== undefined) carryOut(on, ungroupSet(ride, { setId, newId }), 'made')
  },
}

/** The set itself, or the one that the block is a part of. */
function setIdOf({ store, target }: DraftGround): string | undefined {
  const { ride } = store.getState()
  if (!ride || target.kind === 'ride' || target.kind === 'section') return undefined
  return findBlock(ride, target.id)?.set?.id ?? findSet(ride, target.id)?.set.id
}
