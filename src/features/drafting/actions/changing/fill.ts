import { laySection } from '#engine/timeline/laySection.ts'
import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { fillProblem, fillSong } from '#plan/commands/fillSong.ts'
import { findBlock, findItem } from '#plan/places.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'

/** Goes on with what is chosen to the end of its song. */
export const FILL: DraftAction = {
  id: 'stage.fill',
  name: say('many.fill'),
  does: say('many.fillDo'),
  keys: ['E'],
  writes: true,
  inMenu: true,
  over: ['block', 'set', 'several'],
  can: (on) => {
    const { ride } = on.store.getState()
    const filling = fillingOf(on)
    return ride !== null && filling !== undefined && (fillProblem(ride, filling) ?? true)
  },
  do: (on) => {
    const { ride, newId } = on.store.getState()
    const filling = fillingOf(on)
    if (ride && filling) carryOut(on, fillSong(ride, { ...filling, newId }), 'same')
  },
}

function fillingOf({ store, target }: DraftGround) {
  const { ride } = store.getState()
  if (!ride || target.kind === 'ride' || target.kind === 'section') return undefined
  // A part of a set is filled with as its set is.
  const ids = [...new Set(target.ids.map((id) => findBlock(ride, id)?.set?.id ?? id))]
  const section = findItem(ride, ids[0]!)?.section
  return section && { ids, open: laySection(section).open }
}
