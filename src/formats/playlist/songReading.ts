import type { PlaylistSong } from '#plan/songs/sectionsFromPlaylist.ts'
import { say, type Text } from '#words/said.ts'
import { boundedLength } from './readLength.ts'

/** A line read as a song, or the sentence that says why it is none. */
export type SongReading = { ok: true; song: PlaylistSong } | { ok: false; sentence: Text }

const LONGEST_TEXT = 300

/** A song of the values found, once there is a title. */
export function finished(title: string, artist?: string, lengthSeconds?: number, bpm?: number): SongReading {
  if (!/[\p{L}\p{N}]/u.test(title)) return { ok: false, sentence: say('lists.noTitle') }
  if (title.length > LONGEST_TEXT || (artist?.length ?? 0) > LONGEST_TEXT) return { ok: false, sentence: say('lists.longTitle') }
  const length = lengthSeconds === undefined ? undefined : boundedLength(lengthSeconds, `${lengthSeconds} s`)
  if (length && !length.ok) return length
  const song: PlaylistSong = { title }
  if (artist) song.artist = artist
  if (lengthSeconds !== undefined) song.lengthSeconds = lengthSeconds
  if (bpm !== undefined) song.bpm = bpm
  return { ok: true, song }
}
