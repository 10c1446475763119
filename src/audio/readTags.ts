import { parseBlob } from 'music-metadata'
import type { SongTags } from '#plan/songs/songTags.ts'

/** Title, artist and tempo from a file's own tags: ID3, Vorbis comments, iTunes atoms and the rest of what the library reads. Pictures are skipped, and the sound is not looked at. */
export async function readTags(file: Blob): Promise<SongTags> {
  const { title, artist, bpm } = (await parseBlob(file, { skipCovers: true, duration: false })).common
  return { ...(title && { title }), ...(artist && { artist }), ...(bpm && { bpm }) }
}
