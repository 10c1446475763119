import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { chooseTarget, goBy, isOnStage } from './stops.ts'

const more = (step: 1 | -1) => ({
  does: 'select more',
  keyOnly: true as const,
  can: (on: DraftGround) => isOnStage(on) && on.target.kind !== 'section',
  do: (on: DraftGround) => {
    chooseTarget(on)
    goBy(on, on.target.kind === 'set' ? 'set' : 'block', step, on.store.getState().selectRange)
  },
})

export const SELECT_BEFORE: DraftAction = {
  id: 'stage.selectBefore',
  name: 'select the one before too',
  keys: ['Shift+ArrowLeft'],
  ...more(-1),
}
export const SELECT_AFTER: DraftAction = {
  id: 'stage.selectAfter',
  name: 'select the one after too',
  keys: ['Shift+ArrowRight'],
  ...more(1),
}

export const TOGGLE: DraftAction = {
  id: 'stage.toggle',
  name: 'add to the selection, or take out',
  does: 'add to the selection, or take out',
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
  name: 'details of the selection',
  does: 'details of the selection',
  keys: ['Enter'],
  keyOnly: true,
  do: (on) => {
    chooseTarget(on)
    on.tools.openDetails()
  },
}

export const SELECT_NOTHING: DraftAction = {
  id: 'stage.selectNothing',
  name: 'select nothing',
  does: 'select nothing',
  keys: ['Escape'],
  keyOnly: true,
  // In a drag the key lets go of what is dragged, and of nothing else.
  can: ({ store, target }) => store.getState().previewing === null && target.kind !== 'ride',
  do: ({ store }) => store.getState().clearSelection(),
}
