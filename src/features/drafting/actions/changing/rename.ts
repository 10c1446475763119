import type { KeyRow } from '#actions/action.ts'
import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { chooseTarget } from '#features/drafting/actions/gettingAbout/stops.ts'
import { say } from '#words/said.ts'

/** Turns the name of what is under the hand into a field. The details have one as well, so it takes up no room among the buttons. */
export const RENAME: DraftAction = {
  id: 'stage.rename',
  name: say('renaming.rename'),
  does: say('renaming.renameDo'),
  keys: ['F2'],
  writes: true,
  keyOnly: true,
  inMenu: true,
  can: ({ target }) => target.kind === 'block' || target.kind === 'set' || target.kind === 'section',
  do: (on) => {
    if (on.target.kind === 'ride') return
    chooseTarget(on)
    on.tools.rename(on.target.id, on.stop)
  },
}

/** For the key map. */
export const TWO_PRESSES: KeyRow = { keys: ['doubleClick'], does: say('renaming.twoPressesDo') }
