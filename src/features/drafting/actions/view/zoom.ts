import type { DraftAction } from '#features/drafting/actions/draftAction.ts'

/** How much closer one press comes. */
const STEP = 1.5

export const ZOOM_OUT: DraftAction = {
  id: 'stage.zoomOut',
  name: 'zoom out',
  words: () => '−',
  does: 'zoom out',
  do: ({ tools }) => tools.zoomBy(1 / STEP),
}

export const ZOOM_IN: DraftAction = {
  id: 'stage.zoomIn',
  name: 'zoom in',
  words: () => '+',
  does: 'zoom in',
  do: ({ tools }) => tools.zoomBy(STEP),
}
