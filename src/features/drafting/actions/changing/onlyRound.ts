import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { runAndSay } from '#features/drafting/draftActions.ts'
import { singleOutRound } from '#plan/commands/singleOutRound.ts'
import { findBlock } from '#plan/places.ts'
import { say } from '#words/said.ts'

/** Takes the round that has the focus out of its set; from the details it is chosen by its number. */
export const ONLY_ROUND: DraftAction = {
  id: 'stage.onlyRound',
  name: say('many.thisRound'),
  does: say('many.thisRoundDo'),
  keys: ['O'],
  writes: true,
  keyOnly: true,
  inMenu: true,
  can: ({ store, stop, target }) => {
    const { ride } = store.getState()
    return ride !== null && stop !== null && target.kind === 'block' && (findBlock(ride, target.id)?.set?.rounds ?? 0) > 1
  },
  do: (on) => {
    if (on.target.kind === 'block') takeOut(on, on.target.id, Number(on.stop?.dataset.round))
  },
}

/** Takes one round of a part's set out of it, and goes to what the part is there. */
export function takeOut({ store, tools }: Pick<DraftGround, 'store' | 'tools'>, blockId: string, round: number): void {
  const { ride, newId } = store.getState()
  const place = ride ? findBlock(ride, blockId) : undefined
  if (!ride || !place?.set) return
  const command = singleOutRound(ride, { setId: place.set.id, round, newId })
  const alone = command.blockIds[place.index]
  if (!runAndSay(store, command, alone) || alone === undefined) return
  store.getState().selectItem(alone)
  tools.focus(alone)
}
