import type { Action, ActionPlace, Ground } from '#actions/action.ts'

interface ShelfGround extends Ground {
  /** Opens the form of a new song. */
  add: () => void
}

export const ADD_SONG: Action<ShelfGround> = {
  id: 'songs.add',
  name: 'add one by hand',
  does: 'a song for the shelf, typed in',
  can: ({ store }) => store.getState().keepsSongs,
  do: ({ add }) => add(),
}

/** The shelf of songs. */
export const SHELF: ActionPlace<ShelfGround> = {
  id: 'shelf',
  reach: 'page',
  repeats: false,
  groups: [{ title: 'songs', actions: [ADD_SONG] }],
}
