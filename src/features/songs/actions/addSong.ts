import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { say } from '#words/said.ts'

interface ShelfGround extends Ground {
  /** Opens the form of a new song. */
  add: () => void
}

export const ADD_SONG: Action<ShelfGround> = {
  id: 'songs.add',
  name: say('actions.addToSongs'),
  does: say('actions.addToSongsDo'),
  can: ({ store }) => store.getState().keepsSongs,
  do: ({ add }) => add(),
}

/** The shelf of songs. */
export const SHELF: ActionPlace<ShelfGround> = {
  id: 'shelf',
  reach: 'page',
  repeats: false,
  groups: [{ title: say('actions.group', { group: 'songs' }), actions: [ADD_SONG] }],
}
