import { wellFormed } from '#plan/document/plainCopy.ts'
import type { Track } from './track.ts'

/**
 * A playlist in M3U8: lengths in whole seconds, as the first version of the format wants them, and
 * a relative address for every song. Where the music lies is not known here, so each address is
 * the file name {@link musicFileName} gives, beside the playlist. Source: RFC 8216 (2017), section 4: UTF-8 in composed form, with no
 * control characters but line ends.
 */
export const writeM3u8 = (tracks: readonly Track[], ending = 'mp3'): string =>
  `${['#EXTM3U', ...tracks.flatMap((track, index) => entry(track, index, ending))].join('\n')}\n`

const entry = (track: Track, index: number, ending: string): string[] => [
  `#EXTINF:${Math.round(track.seconds)},${oneLine(track.artist ? `${track.artist} - ${track.title}` : track.title)}`,
  encodeURIComponent(musicFileName(track, index, ending)),
]

/** "01 Nine Tin Kites - Brickworks Elevator.mp3": in order, and free of what file systems refuse. */
function musicFileName({ title, artist }: Track, index: number, ending: string): string {
  const name = wellFormed(spaced(artist ? `${artist} - ${title}` : title)).replace(/[\\/:*?"<>|\p{Cc}]+/gu, '_')
  return `${String(index + 1).padStart(2, '0')} ${name}.${ending}`
}

const spaced = (text: string): string => text.normalize('NFC').replace(/\s+/g, ' ').trim()
const oneLine = (text: string): string => spaced(text.replace(/\p{Cc}+/gu, ' '))
