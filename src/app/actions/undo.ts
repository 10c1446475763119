import type { Text } from '#words/said.ts'
import { tell } from '#words/words.ts'
import type { ShellAction, ShellGround } from './shellGround.ts'

/** A class that is led has an undo of its own, and no change of the ride is undone by mistake. */
const isThere = ({ store }: ShellGround): boolean => store.getState().ride !== null && store.getState().place !== 'lead'

export const UNDO: ShellAction = {
  id: 'ride.undo',
  name: 'undo',
  does: 'undo',
  tells: ({ store }) => labelled('undo', store.getState().past.at(-1)),
  keys: ['Mod+Z'],
  writes: true,
  can: (on) => isThere(on) && (on.store.getState().past.length > 0 || 'There is nothing to undo.'),
  do: ({ store }) => void store.getState().undo(),
}

export const REDO: ShellAction = {
  id: 'ride.redo',
  name: 'redo',
  does: 'redo',
  tells: ({ store }) => labelled('redo', store.getState().future.at(-1)),
  keys: ['Mod+Shift+Z', 'Ctrl+Y'],
  writes: true,
  can: (on) => isThere(on) && (on.store.getState().future.length > 0 || 'There is nothing to redo.'),
  do: ({ store }) => void store.getState().redo(),
}

const labelled = (word: string, step: { label: Text } | undefined) => step && `${word}: ${tell(step.label)}`
