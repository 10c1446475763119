import { fileName } from '#features/handover/fileName.ts'
import type { AppStore } from '#store/state.ts'
import { saveTextFile } from '#ui/saveTextFile.ts'

/** Saves the ride as it stands as a file, private notes and all: one's own, else the one received. False where there is none. */
export function downloadRide(store: AppStore): boolean {
  const { ride, shown } = store.getState()
  const kept = ride ?? shown
  if (kept) saveTextFile(fileName(kept.title), `${JSON.stringify(kept, null, 2)}\n`)
  return kept !== null
}
