import { LIMITS } from '#plan/document/schema.ts'
import type { Bpm } from '#units/units.ts'

/** What a file of music says of itself. */
export interface SongTags {
  title?: string
  artist?: string
  /** As some program once took it; often half or double of what is felt. */
  bpm?: Bpm
}

interface SongName {
  title: string
  artist?: string
}

/**
 * What a song is called by its file: as the tags say, else by the file's name without its ending. A name with exactly
 * one “ - ” is taken for artist and title, as players and shops write it; a number before it is the track's.
 */
export function namedByFile(tags: SongTags, fileName: string): SongName {
  const [title, artist] = [tidy(tags.title), tidy(tags.artist)]
  const name = readName(fileName)
  if (title) return artist ? { title, artist } : { title }
  return artist ? { title: name.title, artist } : name
}

function readName(fileName: string): SongName {
  const plain = tidy(fileName.replace(/\.[^.]{1,5}$/, '').replaceAll('_', ' '))
  const name = plain.replace(TRACK_NUMBER, '')
  const parts = name.split(' - ')
  if (parts.length !== 2) return { title: name || fileName.slice(0, LIMITS.line) }
  return { title: parts[1]!.trim(), artist: parts[0]!.trim() }
}

/** "03 - ", "3. " or "1-03 - " at the start of a name. */
const TRACK_NUMBER = /^(?:\d{1,2}-)?\d{1,3}(?: - |\. )(?=\S)/

/** On one line and no longer than a ride takes; tags may hold anything. */
function tidy(text: string | undefined): string {
  return (text ?? '')
    .replace(/[\p{Cc}\s]+/gu, ' ')
    .trim()
    .slice(0, LIMITS.line)
    .trim()
}
