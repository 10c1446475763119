import type { NewId } from '#plan/copies.ts'
import { patched } from '#plan/edits.ts'
import { type Song, tempoOf } from '#plan/model.ts'
import { inOctaveAbout } from './rescaledSong.ts'
import { forRide, type ShelfSong } from './shelfSong.ts'

/**
 * A ride's song given what the shelf knows of its file: length, beats, and marks and quiet windows where it has none
 * of its own, read at the half or double that is nearest to its tempo. A song that is linked to that file already is
 * the same object; without one the shelf's song is taken whole.
 */
export function linkedSong(kept: ShelfSong, old: Song | null | undefined, newId: NewId): Song {
  if (!old) return forRide(kept, newId)
  if (old.fingerprint === kept.song.fingerprint && old.grid) return old
  const { fingerprint, grid, lengthSeconds, marks, quiet, strikesPerBeat } = old.grid
    ? inOctaveAbout(kept.song, tempoOf(old.grid))
    : kept.song
  return patched(old, {
    fingerprint,
    lengthSeconds,
    ...(grid && { grid, strikesPerBeat: old.grid ? old.strikesPerBeat : strikesPerBeat }),
    marks: old.marks ?? marks,
    quiet: old.quiet ?? quiet,
  })
}
