import { useEffect, useMemo, useState } from 'react'
import type { PlayheadSource } from '#features/drafting/stage/Playhead.tsx'
import type { AppStore } from '#store/state.ts'
import { useAppStore } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'
import { createDeck } from './deck.ts'
import { PARTS } from './marking.ts'
import type { Rehearsing } from './RehearsalContext.ts'
import { createRehearsal } from './rehearsal.ts'
import { createSongHearing } from './songHearing.ts'

/** What plays while the draft place is there, and where that is on its stage; null where the page has no sound. */
export function useRehearsing(): { rehearsing: Rehearsing; playhead: PlayheadSource } | null {
  const store = useAppStore()
  const [made] = useState(() => (store.getState().openPlayer === null ? null : makeRehearsing(store)))
  useEffect(() => {
    if (!made) return
    const leave = [made.rehearsal.attend(), made.hearing.attend(), made.deck.attend()]
    return () => {
      for (const one of leave) one()
    }
  }, [made])
  const playhead = useMemo(() => made && headOf(made), [made])
  return useMemo(() => (made && playhead ? { rehearsing: made, playhead } : null), [made, playhead])
}

function makeRehearsing(store: AppStore): Rehearsing {
  const deck = createDeck(store)
  return {
    deck,
    rehearsal: createRehearsal(store, deck),
    hearing: createSongHearing(store, deck),
    lastMark: { label: words.rehearsing.part({ part: PARTS[1] }) },
  }
}

/** The song that is heard by itself, else where the rehearsal stands, else nothing. */
function headOf({ rehearsal, hearing }: Rehearsing): PlayheadSource {
  const second = (timestamp?: number): Seconds | null => {
    const plan = rehearsal.plan()
    if (hearing.snapshot().phase !== 'still') return plan && hearing.rideTimeAt(plan, timestamp)
    return rehearsal.snapshot().open ? rehearsal.timeAt(timestamp) : null
  }
  return {
    subscribe: (listener) => {
      const tell = (timestamp?: number) => listener(second(timestamp))
      const leave = [rehearsal.frames.subscribe(tell), hearing.frames.subscribe(tell)]
      return () => {
        for (const one of leave) one()
      }
    },
  }
}
