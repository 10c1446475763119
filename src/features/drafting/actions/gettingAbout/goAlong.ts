import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { say } from '#words/said.ts'
import { ALL_THE_WAY, goBy, isOnStage } from './stops.ts'

const along = (step: number) => ({
  keyOnly: true as const,
  can: isOnStage,
  do: (on: DraftGround) => {
    const { selectItem, selectSection } = on.store.getState()
    const { kind } = on.target
    if (kind === 'section') goBy(on, 'section', step, selectSection)
    // The ends of the ride are blocks, also for one who is on a set.
    else goBy(on, kind === 'set' && Math.abs(step) === 1 ? 'set' : 'block', step, selectItem)
  },
})

const NEIGHBOUR = say('actions.goAlongDo')
const END = say('actions.goEndsDo')

export const GO_BEFORE: DraftAction = {
  id: 'stage.goBefore',
  name: say('actions.goBefore'),
  does: NEIGHBOUR,
  keys: ['ArrowLeft'],
  ...along(-1),
}
export const GO_AFTER: DraftAction = {
  id: 'stage.goAfter',
  name: say('actions.goAfter'),
  does: NEIGHBOUR,
  keys: ['ArrowRight'],
  ...along(1),
}
export const GO_FIRST: DraftAction = {
  id: 'stage.goFirst',
  name: say('actions.goFirst'),
  does: END,
  keys: ['Home'],
  ...along(-ALL_THE_WAY),
}
export const GO_LAST: DraftAction = { id: 'stage.goLast', name: say('actions.goLast'), does: END, keys: ['End'], ...along(ALL_THE_WAY) }
