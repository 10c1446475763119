import { textOfList } from '#features/songs/textOfList.ts'
import { readSongList } from '#formats/readSongList.ts'
import { isMusicFile } from '#plan/songs/musicFile.ts'
import type { Notice } from '#store/noticeSlice.ts'
import type { AppStore } from '#store/state.ts'
import { and } from '#words/forms.ts'
import { words } from '#words/words.ts'

/**
 * Takes what was dropped on the page: files of music go to the shelf of songs, a list of songs to the new ride on the
 * start page and elsewhere to the songs, a ride is opened, and of all together each goes its way. Without music or a
 * list the first file is taken for a ride, and what is wrong with it is said.
 */
export async function takeFiles(files: readonly File[], store: AppStore, openRide: (file: File) => Promise<void>): Promise<void> {
  const { music, lists, rides, rest } = sorted(files, store.getState().place === 'songs')
  const [ride, ...otherRides] = rides
  const [list, ...otherLists] = lists
  if (ride) await openRide(ride)

  const { hearForShelf, keepsSongs, place } = store.getState()
  const isKept = keepsSongs || (music.length === 0 && (!list || place === 'start'))
  if (!isKept) return say(store, 'problem', [words.app.nothingKept], ride !== undefined)
  const read = list && (await textOfList(list))
  const waits = read?.ok && giveList(list!.name, read.value, store)
  if (music.length > 0 || place === 'songs') hearForShelf([...music, ...rest])
  // In the place of songs each file shows.
  const goes = place !== 'songs' && music.length > 0
  const sentences = [
    read?.ok === false && read.problem,
    goes && words.app.songsComing({ count: music.length }),
    waits,
    place !== 'songs' && rest.length > 0 && sayRest(rest),
    otherRides.length > 0 && words.app.oneRideAtATime({ names: named(otherRides) }),
    otherLists.length > 0 && words.app.oneListAtATime({ names: named(otherLists) }),
  ].filter((sentence) => typeof sentence === 'string')
  const offer = goes || waits ? ({ label: words.app.openSongs, place: 'songs' } as const) : undefined
  say(store, read?.ok === false ? 'problem' : 'info', sentences, ride !== undefined, offer)
}

/** Says all of it in one notice. What opening a ride had to say stays above it. */
function say(store: AppStore, kind: Notice['kind'], sentences: readonly string[], opened: boolean, offer?: Notice['offer']): void {
  const [sentence, ...details] = sentences
  if (sentence === undefined) return
  const { notify, notice } = store.getState()
  const more = offer && { offer }
  if (opened && notice) notify({ ...notice, details: [...(notice.details ?? []), ...sentences], ...more })
  else notify({ kind, sentence, ...(details.length > 0 && { details }), ...more })
}

/** Files by what they mean to be. */
interface Sorted {
  music: File[]
  lists: File[]
  rides: File[]
  rest: File[]
}

function sorted(files: readonly File[], amongSongs: boolean): Sorted {
  const music = files.filter(isMusicFile)
  const lists = files.filter((file) => isSongListFile(file) || (music.length === 0 && isPlainListFile(file)))
  const others = files.filter((file) => !music.includes(file) && !lists.includes(file))
  const rides = others.filter(({ name }) => name.toLowerCase().endsWith('.json'))
  const rest = others.filter((file) => !rides.includes(file))
  const isAnything = amongSongs || music.length + lists.length + rides.length > 0
  return isAnything ? { music, lists, rides, rest } : { music, lists, rides: rest.slice(0, 1), rest: rest.slice(1) }
}

/** Has a list ready for where lists are taken; the sentence that says so where that is elsewhere. */
function giveList(name: string, text: string, store: AppStore): string | false {
  const { dropList, announce, place } = store.getState()
  const { songs } = readSongList(text)
  const what = { name, count: songs.length }
  dropList({ text, for: place === 'start' ? place : 'songs' })
  if (place !== 'start' && place !== 'songs') return words.app.listWaits(what)
  announce(words.app.listRead(what))
  return false
}

const sayRest = (files: readonly File[]): string =>
  files.length === 1 ? words.app.skippedFile({ name: files[0]!.name }) : words.app.skippedFiles({ count: files.length })

const MOST_NAMED = 3

const named = (files: readonly File[]): string => {
  const more = files.length - MOST_NAMED
  const names = files.slice(0, MOST_NAMED).map(({ name }) => words.names.quoted({ name }))
  return more > 0 ? words.app.filesAndMore({ names, more }) : and(names)
}

const LISTS = /\.(?:csv|tsv|xspf|m3u8?)$/i
const PLAIN = /\.txt$/i

/** Whether a file means to be a list of songs, by its name. Systems know no one type of these. */
const isSongListFile = ({ name }: { name: string }): boolean => LISTS.test(name)

/** Plain text can be a list of songs, one a line; beside music it is as often a note about the album. */
const isPlainListFile = ({ name }: { name: string }): boolean => PLAIN.test(name)
