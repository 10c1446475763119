import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { joinBlocks } from '#plan/commands/joinBlocks.ts'
import { isSet } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'

export const JOIN: DraftAction = {
  id: 'stage.join',
  name: say('actions.merge'),
  does: say('actions.mergeDo'),
  keys: ['J'],
  writes: true,
  inMenu: true,
  over: ['block'],
  can: ({ store, target }) => {
    const { ride } = store.getState()
    const place = ride && target.kind === 'block' ? findBlock(ride, target.id) : undefined
    if (!place) return false
    const next = place.list[place.index + 1]
    return (next !== undefined && !isSet(next)) || say('actions.noBlockAfter')
  },
  do: (on) => {
    const { ride } = on.store.getState()
    if (ride && on.target.kind === 'block') carryOut(on, joinBlocks(ride, { blockId: on.target.id }), 'same')
  },
}
