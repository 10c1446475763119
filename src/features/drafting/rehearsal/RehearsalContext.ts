import { createContext, useContext } from 'react'
import type { Deck } from './deck.ts'
import type { Rehearsal } from './rehearsal.ts'
import type { SongHearing } from './songHearing.ts'

/** What plays in the draft place: the ride, or one song of it, on one deck. */
export interface Rehearsing {
  rehearsal: Rehearsal
  hearing: SongHearing
  deck: Deck
  /** What the last mark was called, for the key that sets another. */
  lastMark: { label: string }
}

/** Null where nothing can be heard. */
export const RehearsalContext = createContext<Rehearsing | null>(null)

export const useRehearsal = (): Rehearsing | null => useContext(RehearsalContext)
