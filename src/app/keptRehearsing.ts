import { NEW_TO_REHEARSING, type RehearsalHabits } from '#store/rehearsalSlice.ts'
import type { AppStore } from '#store/state.ts'

const NAME = 'ridewright.rehearsing'

/** Brings back how rehearsing was liked, and notes it as soon as it changes. */
export function keepRehearsing(store: AppStore, storage: Pick<Storage, 'getItem' | 'setItem'> | null): void {
  store.getState().setRehearsalHabits(readHabits(storage))
  store.subscribe(({ rehearsalHabits }, before) => {
    if (rehearsalHabits === before.rehearsalHabits) return
    try {
      storage?.setItem(NAME, JSON.stringify(rehearsalHabits))
    } catch {
      // Full or refused: they last as long as the page.
    }
  })
}

/** What was noted, as far as it is of the right kind and range. */
function readHabits(storage: Pick<Storage, 'getItem'> | null): Partial<RehearsalHabits> {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(NAME) ?? '{}')
    if (typeof kept !== 'object' || kept === null) return {}
    return Object.fromEntries(Object.entries(kept).filter(([key, value]) => fits(key, value)))
  } catch {
    return {}
  }
}

function fits(key: string, value: unknown): boolean {
  if (!Object.hasOwn(NEW_TO_REHEARSING, key)) return false
  if (typeof value !== typeof NEW_TO_REHEARSING[key as keyof RehearsalHabits]) return false
  if (typeof value !== 'number') return true
  return key === 'speed' ? value >= 0.5 && value <= 1.5 : value >= 0 && value <= 1
}
