import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { chooseTarget } from '#features/drafting/actions/gettingAbout/stops.ts'
import { findBlock } from '#plan/places.ts'
import { say } from '#words/said.ts'

/** Opens a line for a new block after what is under the hand. */
export const TYPE_LINE: DraftAction = {
  id: 'stage.typeLine',
  name: say('typedLine.type'),
  does: say('typedLine.typeDo'),
  keys: ['L', 'Insert'],
  writes: true,
  inMenu: true,
  over: ['ride', 'section', 'block', 'set'],
  do: (on) => {
    if (on.target.kind !== 'ride') chooseTarget(on)
    on.tools.typeLine(null)
  },
}

/** Shows a block as a line, to be changed there. */
export const EDIT_LINE: DraftAction = {
  id: 'stage.editLine',
  name: say('typedLine.edit'),
  does: say('typedLine.editDo'),
  keys: ['Shift+L'],
  writes: true,
  inMenu: true,
  keyOnly: true,
  can: ({ store, target }) => {
    const { ride } = store.getState()
    return ride !== null && target.kind === 'block' && findBlock(ride, target.id) !== undefined
  },
  do: (on) => {
    if (on.target.kind !== 'block') return
    chooseTarget(on)
    on.tools.typeLine(on.target.id)
  },
}
