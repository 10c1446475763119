import type { NewId } from '#plan/copies.ts'
import { patched } from '#plan/edits.ts'
import type { Song } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { HeardSong } from './heardSong.ts'
import { type ShelfSong, songKey } from './shelfSong.ts'
import { songHeard } from './songHeard.ts'

/** Two files of one recording are as long, but for what an encoder adds at either end. */
const SAME_RECORDING: Seconds = 1

/**
 * A heard file as a song of the shelf: of the song that file belongs to, else of the one that is called so and belongs
 * to no other recording, else a new one. What its leader wrote stays: title, artist, energy, marks, and beats that
 * were heard before and may have been put right since, unless they are to be heard anew.
 */
export function heardOnShelf(heard: HeardSong, shelf: readonly ShelfSong[], newId: NewId, anew = false): ShelfSong {
  const there = shelf.find(({ song }) => song.fingerprint === heard.fingerprint) ?? calledSo(heard, shelf)
  if (!there) {
    const id = newId()
    return { id, song: songHeard(heard, null, () => id) }
  }
  const { song } = there
  const keepsBeats = !anew && song.grid !== undefined && song.fingerprint !== undefined
  const artist = song.artist ?? heard.artist
  const next = keepsBeats ? patched(song, { fingerprint: heard.fingerprint }) : songHeard(heard, song, newId)
  return { ...there, song: patched(next, { artist }) }
}

/** The one song with a title and an artist; an artist that only one of the two names does not keep them apart. */
function calledSo(heard: HeardSong, shelf: readonly ShelfSong[]): ShelfSong | undefined {
  const free = shelf.filter(({ song }) => isFree(song, heard))
  const exact = free.find(({ song }) => songKey(song) === songKey(heard))
  if (exact) return exact
  const title = songKey({ title: heard.title })
  const alike = free.filter(({ song }) => songKey({ title: song.title }) === title && (!song.artist || !heard.artist))
  return alike.length === 1 ? alike[0] : undefined
}

const isFree = ({ fingerprint, lengthSeconds }: Song, heard: HeardSong): boolean =>
  fingerprint === undefined || Math.abs(lengthSeconds - heard.lengthSeconds) < SAME_RECORDING
