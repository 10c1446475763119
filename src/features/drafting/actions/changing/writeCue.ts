import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { chooseTarget } from '#features/drafting/actions/gettingAbout/stops.ts'
import { say } from '#words/said.ts'

/** Opens the line in which the cues of a block are written, one block after another. */
export const WRITE_CUE: DraftAction = {
  id: 'stage.writeCue',
  name: say('cueLine.write'),
  does: say('cueLine.writeDo'),
  keys: ['W'],
  writes: true,
  inMenu: true,
  can: ({ store, target }) =>
    target.kind === 'block' && store.getState().report?.blocks.some(({ block, from, to }) => block.id === target.id && to > from) === true,
  do: (on) => {
    if (on.target.kind !== 'block') return
    chooseTarget(on)
    on.tools.writeCue(on.target.id)
  },
}
