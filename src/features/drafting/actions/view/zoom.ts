import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { say } from '#words/said.ts'

/** How much closer one press comes. */
const STEP = 1.5

export const ZOOM_OUT: DraftAction = {
  id: 'stage.zoomOut',
  name: say('actions.zoomOut'),
  words: () => '−',
  does: say('actions.zoomOut'),
  do: ({ tools }) => tools.zoomBy(1 / STEP),
}

export const ZOOM_IN: DraftAction = {
  id: 'stage.zoomIn',
  name: say('actions.zoomIn'),
  words: () => '+',
  does: say('actions.zoomIn'),
  do: ({ tools }) => tools.zoomBy(STEP),
}
