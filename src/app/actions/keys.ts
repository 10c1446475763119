import type { ShellAction } from './shellGround.ts'

export const KEYS: ShellAction = {
  id: 'shell.keys',
  name: 'keys',
  does: 'this map',
  tells: () => 'keys',
  keys: ['?'],
  do: ({ openKeys }) => openKeys(),
}
