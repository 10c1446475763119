import { say } from '#words/said.ts'
import type { ShellAction } from './shellGround.ts'

export const KEYS: ShellAction = {
  id: 'shell.keys',
  name: say('actions.shortcuts'),
  does: say('actions.shortcutsDo'),
  tells: () => say('actions.shortcutsTell'),
  keys: ['?'],
  do: ({ openKeys }) => openKeys(),
}
