import { useEffect, useMemo } from 'react'
import { energyOf, type SongDrive } from '#engine/loudness/energyOf.ts'
import type { Ride, Song } from '#plan/model.ts'
import { songKey } from '#plan/songs/shelfSong.ts'
import { useApp, useAppStore } from '#store/useApp.ts'

/**
 * What is known of the songs of a ride beside themselves, by their ids: their energy, as the shelf has it or as the sound
 * of the shelf's song suggests, and their loudness where their own file was heard, since only then their beats are that file's.
 */
export function useDrives(ride: Ride | null): ReadonlyMap<string, SongDrive> {
  const store = useAppStore()
  const shelf = useApp((state) => state.songs)
  const sounds = useApp((state) => state.sounds)
  useEffect(() => {
    const songs = ride?.sections.flatMap(({ song }) => song ?? []) ?? []
    const keys = new Set(songs.map(songKey))
    const kept = shelf.flatMap(({ song }) => (keys.has(songKey(song)) ? song : []))
    void store.getState().wantSounds([...songs, ...kept].flatMap(({ fingerprint }) => fingerprint ?? []))
  }, [store, ride, shelf])
  return useMemo(() => {
    const loudnessOf = (song: Song) => sounds.get(song.fingerprint ?? '')?.loudness
    const energies = new Map(
      shelf.map(({ song, energy }) => {
        const loudness = loudnessOf(song)
        return [songKey(song), energyOf(song, { ...(energy && { energy }), ...(loudness && { loudness }) })] as const
      }),
    )
    const drives = new Map<string, SongDrive>()
    for (const { song } of ride?.sections ?? []) {
      if (!song) continue
      const energy = energies.get(songKey(song))
      const loudness = loudnessOf(song)
      if (energy || loudness) drives.set(song.id, { ...(energy && { energy }), ...(loudness && { loudness }) })
    }
    return drives
  }, [ride, shelf, sounds])
}
