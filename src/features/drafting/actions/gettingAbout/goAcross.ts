import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { findBlock, findItem, findSet } from '#plan/places.ts'
import { say } from '#words/said.ts'
import { chooseTarget, isOnStage } from './stops.ts'

const BETWEEN = say('actions.goAcrossDo')

/** From a round’s block to its set, from everything else to the song. */
export const GO_UP: DraftAction = {
  id: 'stage.goUp',
  name: say('actions.goUp'),
  does: BETWEEN,
  keys: ['ArrowUp'],
  keyOnly: true,
  can: (on) => isOnStage(on) && on.target.kind !== 'section',
  do: goUp,
}

/** To the set of a part, else to the song. */
export function goUp({ store, tools, target }: DraftGround): void {
  const { shown, selection, selectItem, selectSection } = store.getState()
  const set = shown && target.kind === 'block' && selection.ids.length < 2 ? findBlock(shown, target.id)?.set : undefined
  const up = set?.id ?? (shown && target.kind !== 'ride' ? songOf(shown, target.id) : undefined) ?? selection.sectionId
  if (up === null) return
  if (set) selectItem(up)
  else selectSection(up)
  tools.focus(up)
}

const songOf = (ride: Ride, id: string): string | undefined => (findBlock(ride, id) ?? findItem(ride, id))?.section.id

/** From a song to its first block, from a set to its first part, from a block to its cues. */
export const GO_DOWN: DraftAction = {
  id: 'stage.goDown',
  name: say('actions.goDown'),
  does: BETWEEN,
  keys: ['ArrowDown'],
  keyOnly: true,
  can: isOnStage,
  do: (on) => {
    if (on.target.kind === 'block') {
      chooseTarget(on)
      on.tools.openCues()
      return
    }
    const first = firstInside(on)
    if (first === undefined) return
    on.store.getState().selectItem(first)
    on.tools.focus(first)
  },
}

function firstInside({ store, target }: DraftGround): string | undefined {
  const { shown } = store.getState()
  if (!shown || target.kind === 'ride') return undefined
  if (target.kind !== 'section') return findSet(shown, target.id)?.set.parts[0]?.id
  const first = shown.sections.find((section) => section.id === target.id)?.blocks[0]
  return first && isSet(first) ? first.parts[0]?.id : first?.id
}
