import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { say } from '#words/said.ts'

/** The menu of what can be done to what has the focus, else to what is selected. */
export const MENU: DraftAction = {
  id: 'clipboard.menu',
  name: say('clipboard.menu'),
  words: () => say('clipboard.menuButton'),
  does: say('clipboard.menuDo'),
  keys: ['Shift+F10', 'ContextMenu'],
  over: ['section', 'set', 'block', 'several'],
  do: (on, { currentTarget }) => on.tools.openMenu({ stop: on.stop, at: on.stop ?? currentTarget ?? null, which: 'all' }),
}

/** The same menu with nothing in it but what is pasted in part. */
export const PASTE_ONLY: DraftAction = {
  id: 'clipboard.pasteOnly',
  name: say('clipboard.pasteOnly'),
  does: say('clipboard.pasteOnlyDo'),
  keys: ['Mod+Shift+V'],
  writes: true,
  keyOnly: true,
  can: ({ target }) => target.kind !== 'ride',
  do: (on, { currentTarget }) => on.tools.openMenu({ stop: on.stop, at: on.stop ?? currentTarget ?? null, which: 'paste' }),
}
