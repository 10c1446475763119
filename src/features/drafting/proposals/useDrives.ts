import { useEffect, useMemo } from 'react'
import type { SongDrive } from '#engine/loudness/energyOf.ts'
import type { Ride } from '#plan/model.ts'
import { songKey } from '#plan/shelfSong.ts'
import { useApp, useAppStore } from '#store/useApp.ts'

/** What is known of the songs of a ride beside themselves: their energy on the shelf, and their loudness where their sound is known here. By song id. */
export function useDrives(ride: Ride | null): ReadonlyMap<string, SongDrive> {
  const store = useAppStore()
  const shelf = useApp((state) => state.songs)
  const sounds = useApp((state) => state.sounds)
  useEffect(() => {
    void store.getState().wantSounds(ride?.sections.flatMap(({ song }) => song?.fingerprint ?? []) ?? [])
  }, [store, ride])
  return useMemo(() => {
    const energies = new Map(shelf.flatMap(({ song, energy }) => (energy ? [[songKey(song), energy] as const] : [])))
    const drives = new Map<string, SongDrive>()
    for (const { song } of ride?.sections ?? []) {
      if (!song) continue
      const energy = energies.get(songKey(song))
      const loudness = sounds.get(song.fingerprint ?? '')?.loudness
      if (energy || loudness) drives.set(song.id, { ...(energy && { energy }), ...(loudness && { loudness }) })
    }
    return drives
  }, [ride, shelf, sounds])
}
