import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { findBlock } from '#plan/places.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'

/** Rounds a new set starts with. */
const FIRST_ROUNDS = 2

export const GROUP: DraftAction = {
  id: 'stage.group',
  name: say('actions.repeat'),
  words: ({ target }) => (target.kind === 'several' ? say('actions.repeatAll') : say('actions.repeat')),
  does: say('actions.repeatDo'),
  keys: ['G'],
  writes: true,
  inMenu: true,
  over: ['block'],
  can: ({ store, target }) => {
    const { ride } = store.getState()
    if (!ride || target.kind === 'ride' || target.kind === 'section') return false
    const inSet = target.ids.length === 1 && findBlock(ride, target.id)?.set !== undefined
    if (target.kind === 'set' || inSet) return target.kind === 'block' && say('actions.inSetAlready')
    const command = groupIntoSet(ride, { ids: target.ids, rounds: FIRST_ROUNDS, newId: () => 'tried' })
    return command.apply(ride) !== ride || say('actions.apart')
  },
  do: (on) => {
    const { ride, newId } = on.store.getState()
    const { target } = on
    if (!ride || target.kind === 'ride' || target.kind === 'section') return
    carryOut(on, groupIntoSet(ride, { ids: target.ids, rounds: FIRST_ROUNDS, newId }), 'made')
  },
}
