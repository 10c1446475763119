import { useEffect, useState } from 'react'
import { useApp, useAppStore } from './useApp.ts'

/** The file of a song on this machine. */
interface KeptFile {
  /** In bytes; null where the file is neither at hand nor kept, or where none can be kept. */
  size: number | null
  /** Whether it is kept, or is being kept. */
  kept: boolean
  keep: (keep: boolean) => Promise<void>
}

/** Whether the file of a song is kept, how large it is, and the way to keep it or let it go. */
export function useKeptFile(fingerprint: string): KeptFile {
  const store = useAppStore()
  const keepsFiles = useApp((state) => state.keepsSoundFiles)
  const kept = useApp((state) => state.keptSoundFiles.has(fingerprint))
  const atHand = useApp((state) => state.soundFiles.get(fingerprint))
  const [wanted, setWanted] = useState<boolean | null>(null)
  const [stored, setStored] = useState<{ fingerprint: string; size: number } | null>(null)
  useEffect(() => {
    if (atHand || !kept) return
    let current = true
    void store
      .getState()
      .soundFile(fingerprint)
      .then((file) => current && file && setStored({ fingerprint, size: file.size }))
    return () => {
      current = false
    }
  }, [store, fingerprint, atHand, kept])
  const known = kept && stored?.fingerprint === fingerprint ? stored.size : null
  return {
    size: keepsFiles ? (atHand?.size ?? known) : null,
    kept: wanted ?? kept,
    keep: async (keep) => {
      setWanted(keep)
      await (keep ? store.getState().keepSoundFile(fingerprint) : store.getState().dropSoundFile(fingerprint))
      setWanted(null)
    },
  }
}
