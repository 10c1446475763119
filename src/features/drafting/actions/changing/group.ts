import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { findBlock } from '#plan/places.ts'
import { carryOut } from './carryOut.ts'

/** Rounds a new set starts with. */
const FIRST_ROUNDS = 2

export const GROUP: DraftAction = {
  id: 'stage.group',
  name: 'group into rounds',
  words: ({ target }) => (target.kind === 'several' ? 'make a set of two rounds' : 'rounds'),
  does: 'group into a set of rounds',
  keys: ['G'],
  writes: true,
  over: ['block'],
  can: ({ store, target }) => {
    const { ride } = store.getState()
    if (!ride || target.kind === 'ride' || target.kind === 'section') return false
    const inSet = target.ids.length === 1 && findBlock(ride, target.id)?.set !== undefined
    if (target.kind === 'set' || inSet) return target.kind === 'block' && 'It is in a set of rounds already.'
    const command = groupIntoSet(ride, { ids: target.ids, rounds: FIRST_ROUNDS, newId: () => 'tried' })
    return command.apply(ride) !== ride || 'A set is made of single blocks that stand side by side in one section.'
  },
  do: (on) => {
    const { ride, newId } = on.store.getState()
    const { target } = on
    if (!ride || target.kind === 'ride' || target.kind === 'section') return
    carryOut(on, groupIntoSet(ride, { ids: target.ids, rounds: FIRST_ROUNDS, newId }), 'made')
  },
}
