import { type Song, tempoOf } from '#plan/model.ts'
import { type Energy, guessEnergy } from './guessEnergy.ts'
import type { Loudness } from './meanLoudness.ts'

/** What may be known of a song beside itself. */
export interface SongDrive {
  /** How much drive it has by its leader's ear. */
  energy?: Energy
  /** Loudness of each of its seconds, LUFS. */
  loudness?: Loudness
}

/** How much drive a song has: as its leader says, else as its sound suggests; undefined where neither is known. */
export function energyOf(song: Pick<Song, 'grid'>, { energy, loudness }: SongDrive): Energy | undefined {
  return energy ?? (loudness && (guessEnergy(loudness, song.grid && tempoOf(song.grid)) ?? undefined))
}
