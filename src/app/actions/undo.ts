import { say, type Text } from '#words/said.ts'
import type { ShellAction, ShellGround } from './shellGround.ts'

/** A class that is led has an undo of its own, and no change of the ride is undone by mistake. */
const isThere = ({ store }: ShellGround): boolean => store.getState().ride !== null && store.getState().place !== 'lead'

export const UNDO: ShellAction = {
  id: 'ride.undo',
  name: say('actions.undo'),
  does: say('actions.undo'),
  tells: ({ store }) => labelled('actions.undoThat', store.getState().past.at(-1)),
  keys: ['Mod+Z'],
  writes: true,
  can: (on) => isThere(on) && (on.store.getState().past.length > 0 || say('actions.nothingToUndo')),
  do: ({ store }) => void store.getState().undo(),
}

export const REDO: ShellAction = {
  id: 'ride.redo',
  name: say('actions.redo'),
  does: say('actions.redo'),
  tells: ({ store }) => labelled('actions.redoThat', store.getState().future.at(-1)),
  keys: ['Mod+Shift+Z', 'Ctrl+Y'],
  writes: true,
  can: (on) => isThere(on) && (on.store.getState().future.length > 0 || say('actions.nothingToRedo')),
  do: ({ store }) => void store.getState().redo(),
}

/** All that can be undone and made again, to jump to any point of it. */
export const UNDO_LIST: ShellAction = {
  id: 'ride.undoList',
  name: say('undoList.changes'),
  does: say('undoList.changesDo'),
  keys: ['H'],
  writes: true,
  can: (on) => {
    const { past, future } = on.store.getState()
    return isThere(on) && (past.length + future.length > 0 || say('actions.nothingToUndo'))
  },
  do: ({ openUndoList }) => openUndoList(),
}

const labelled = (path: 'actions.undoThat' | 'actions.redoThat', step: { label: Text } | undefined) =>
  step && say(path, { change: step.label })
