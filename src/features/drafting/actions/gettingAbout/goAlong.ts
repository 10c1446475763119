import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
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

const NEIGHBOUR = 'the block or song before, after'
const END = 'the first, the last'

export const GO_BEFORE: DraftAction = { id: 'stage.goBefore', name: 'the one before', does: NEIGHBOUR, keys: ['ArrowLeft'], ...along(-1) }
export const GO_AFTER: DraftAction = { id: 'stage.goAfter', name: 'the one after', does: NEIGHBOUR, keys: ['ArrowRight'], ...along(1) }
export const GO_FIRST: DraftAction = { id: 'stage.goFirst', name: 'the first', does: END, keys: ['Home'], ...along(-ALL_THE_WAY) }
export const GO_LAST: DraftAction = { id: 'stage.goLast', name: 'the last', does: END, keys: ['End'], ...along(ALL_THE_WAY) }
