import type { AppStore } from '#store/state.ts'

const NAME = 'ridewright.formPoints'
/** More than anyone turns over in a class, and as long as a cue may be. */
const MOST = 60
const LONGEST = 300

/** Brings the leader's own form points back, and notes them as soon as they change: a change is rare and small. */
export function keepHabits(store: AppStore, storage: Pick<Storage, 'getItem' | 'setItem'> | null): void {
  const kept = readPoints(storage)
  if (kept.length > 0) store.getState().setFormPoints(kept)
  store.subscribe(({ formPoints }, before) => {
    if (formPoints === before.formPoints) return
    try {
      storage?.setItem(NAME, JSON.stringify(formPoints ?? []))
    } catch {
      // Full or refused: they last as long as the page.
    }
  })
}

function readPoints(storage: Pick<Storage, 'getItem'> | null): string[] {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(NAME) ?? '[]')
    return Array.isArray(kept)
      ? kept.filter((point) => typeof point === 'string' && point.trim() !== '' && point.length <= LONGEST).slice(0, MOST)
      : []
  } catch {
    return []
  }
}
