import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { splitBlock } from '#plan/commands/splitBlock.ts'
import { type BlockPlace, findBlock } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'

export const SPLIT: DraftAction = {
  id: 'stage.split',
  name: say('actions.split'),
  does: say('actions.splitDo'),
  keys: ['S'],
  writes: true,
  inMenu: true,
  over: ['block'],
  can: ({ store, target }) => {
    const { ride } = store.getState()
    const place = ride && target.kind === 'block' ? findBlock(ride, target.id) : undefined
    return place !== undefined && (amountOf(place.block.length) > 1 || say('actions.tooShort'))
  },
  do: (on) => {
    const { ride, newId } = on.store.getState()
    const place = ride && on.target.kind === 'block' ? findBlock(ride, on.target.id) : undefined
    if (ride && place) carryOut(on, splitBlock(ride, { blockId: place.block.id, at: middleOf(place), newId }), 'same')
  },
}

/** At the nearest whole eight, so that a split leaves no crooked block where it need not. */
function middleOf({ block: { length }, section }: BlockPlace): number {
  if ('seconds' in length) return Math.round(length.seconds / 2)
  const eight = eightOf(section.song?.grid)
  const half = Math.round(length.counts / 2 / eight) * eight
  return half > 0 && half < length.counts ? half : Math.round(length.counts / 2)
}
