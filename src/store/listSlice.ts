import type { GetState, SetState } from './state.ts'

/** Where lists of songs are taken: for a new ride, or for the shelf. */
export type ListPlace = 'start' | 'songs'

/** A list of songs as it stands in a file. */
interface SongListText {
  text: string
  for: ListPlace
}

/** A list of songs that was dropped on the page, until the place it is for has it. */
export interface ListSlice {
  droppedList: SongListText | null

  /** Has a list ready for its place. One that waits is replaced. */
  dropList: (list: SongListText) => void
  /** Hands the list of a place over, once. */
  takeList: (place: ListPlace) => string | null
}

export function createListSlice(set: SetState, get: GetState): ListSlice {
  return {
    droppedList: null,
    dropList: (droppedList) => set({ droppedList }),
    takeList: (place) => {
      const { droppedList } = get()
      if (droppedList?.for !== place) return null
      set({ droppedList: null })
      return droppedList.text
    },
  }
}
