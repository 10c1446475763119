import type { ActionPlace } from '#actions/action.ts'
import { say } from '#words/said.ts'
import type { ShellAction, ShellGround } from './shellGround.ts'

export const FIND: ShellAction = {
  id: 'shell.find',
  name: say('search.find'),
  does: say('search.findDo'),
  tells: () => say('search.findTell'),
  keys: ['Mod+K'],
  // The key is taken all the same: the browser's own search would cover the class.
  can: ({ store }) => store.getState().place !== 'lead' || say('search.notInClass'),
  do: ({ openFind }) => openFind(),
}

/** Finding, also while a field has the focus. */
export const FINDING: ActionPlace<ShellGround> = {
  id: 'finding',
  reach: 'everywhere',
  repeats: false,
  inFields: true,
  groups: [{ title: say('actions.group', { group: 'everywhere' }), actions: [FIND] }],
}
