import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { say } from '#words/said.ts'
import { goUp } from './goAcross.ts'
import { chooseTarget, goBy, isOnStage } from './stops.ts'

const more = (step: 1 | -1) => ({
  does: say('actions.selectMoreDo'),
  keyOnly: true as const,
  can: (on: DraftGround) => isOnStage(on) && on.target.kind !== 'section',
  do: (on: DraftGround) => {
    chooseTarget(on)
    goBy(on, on.target.kind === 'set' ? 'set' : 'block', step, on.store.getState().selectRange)
  },
})

export const SELECT_BEFORE: DraftAction = {
  id: 'stage.selectBefore',
  name: say('actions.selectBefore'),
  keys: ['Shift+ArrowLeft'],
  ...more(-1),
}
export const SELECT_AFTER: DraftAction = {
  id: 'stage.selectAfter',
  name: say('actions.selectAfter'),
  keys: ['Shift+ArrowRight'],
  ...more(1),
}

export const TOGGLE: DraftAction = {
  id: 'stage.toggle',
  name: say('actions.toggle'),
  does: say('actions.toggle'),
  keys: ['Space'],
  keyOnly: true,
  can: isOnStage,
  do: ({ store, target }) => {
    const { selectSection, toggleItem } = store.getState()
    if (target.kind === 'section') selectSection(target.id)
    else if (target.kind !== 'ride') toggleItem(target.id)
  },
}

export const DETAILS: DraftAction = {
  id: 'stage.details',
  name: say('actions.details'),
  does: say('actions.details'),
  keys: ['Enter'],
  keyOnly: true,
  do: (on) => {
    chooseTarget(on)
    on.tools.openDetails()
  },
}

/** From a part of a set to the set, from blocks and sets to their song, from a song to nothing that is selected. */
export const GO_OUT: DraftAction = {
  id: 'stage.goOut',
  name: say('many.goOut'),
  does: say('many.goOutDo'),
  keys: ['Escape'],
  keyOnly: true,
  // In a drag the key lets go of what is dragged, and of nothing else.
  can: ({ store, target }) => store.getState().previewing === null && target.kind !== 'ride',
  do: (on) => {
    const { selection, clearSelection } = on.store.getState()
    if (on.target.kind === 'section' || (selection.ids.length === 0 && selection.sectionId === null)) clearSelection()
    else goUp(on)
  },
}
