import { type Energy, guessEnergy } from '#engine/loudness/guessEnergy.ts'
import { tempoOf } from '#plan/model.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import type { SongSound } from '#plan/sound/songSound.ts'
import { words } from '#words/words.ts'

/** A guess at a song's energy from its sound; null where that is not known here. */
export const guessOf = ({ song }: Pick<ShelfSong, 'song'>, sound: SongSound | undefined): Energy | null =>
  sound ? guessEnergy(sound.loudness, song.grid && tempoOf(song.grid)) : null

/** How much drive a song has, in words: by its leader's ear, else a guess. */
export function sayEnergy(kept: ShelfSong, sound: SongSound | undefined): string {
  if (kept.energy) return words.songs.energyOf({ energy: kept.energy })
  const guess = guessOf(kept, sound)
  return guess === null ? '–' : words.songs.aboutEnergy({ energy: guess })
}
