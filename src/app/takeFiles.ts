import { isMusicFile } from '#plan/musicFile.ts'
import { plural } from '#plan/words.ts'
import type { AppStore } from '#store/state.ts'

/**
 * Takes what was dropped on the page: files of music go to the shelf of songs, a ride is opened, and of both together
 * each goes its way. Without music the first file is taken for a ride, and what is wrong with it is said.
 */
export async function takeFiles(files: readonly File[], store: AppStore, openRide: (file: File) => Promise<void>): Promise<void> {
  const music = files.filter(isMusicFile)
  const ride = music.length === 0 && store.getState().place !== 'songs' ? files[0] : files.find(({ name }) => name.endsWith('.json'))
  const rest = files.filter((file) => file !== ride && !music.includes(file)).length
  if (ride) await openRide(ride)
  if (ride && music.length === 0) return
  const { hearForShelf, keepsSongs, notify } = store.getState()
  if (music.length > 0 && !keepsSongs) {
    return notify({ kind: 'problem', sentence: 'Nothing can be kept in this window, so no songs either.' })
  }
  hearForShelf(files.filter((file) => file !== ride))
  if (store.getState().place !== 'songs') say(store, music.length, rest, ride !== undefined)
}

/** Where the music went. What opening a ride had to say stays above it. */
function say(store: AppStore, music: number, leftOut: number, opened: boolean): void {
  const { notify } = store.getState()
  const notice = opened ? store.getState().notice : null
  const sentence = `${plural(music, 'song')} ${music === 1 ? 'goes to the shelf once it is read' : 'go to the shelf as they are read'}.${
    leftOut > 0 ? ` ${plural(leftOut, 'file')} that ${leftOut === 1 ? 'is' : 'are'} no music stayed out.` : ''
  }`
  const offer = { label: 'open the songs', place: 'songs' } as const
  notify(notice ? { ...notice, details: [...(notice.details ?? []), sentence], offer } : { kind: 'info', sentence, offer })
}
