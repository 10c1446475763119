import { shareable } from '#plan/link/shareable.ts'
import { parseRide } from '#plan/parseRide.ts'
import { revisionOf } from '#plan/revisionOf.ts'
import type { RideShelf } from '#store/ports.ts'
import type { AppStore } from '#store/state.ts'

/** Largest file looked at, in bytes; a long ride with every word written out takes a fiftieth. */
const LARGEST = 8_000_000

/**
 * Opens a ride from a file. One that is not on the shelf becomes a ride of one's own; one that
 * is there and says the same is opened from there; one that is there and says something else is
 * shown read-only, so that neither of the two is lost. What cannot be opened is said in a notice.
 */
export async function openRideFile(file: File, store: AppStore, shelf: RideShelf | null): Promise<void> {
  const state = store.getState()
  const refuse = (sentence: string, details?: string[]) =>
    state.notify({ kind: 'problem', sentence: `“${file.name}” was not opened. ${sentence}`, details })
  if (file.size > LARGEST) return refuse('It is far larger than any ride.')

  const text = await textOf(file)
  if (text === null) return refuse('It could not be read from the disk.')
  const json = jsonOf(text)
  if (json === undefined) return refuse('It is not a ride: a ride is a file that ends in .ride.json, saved by this program.')
  const parsed = parseRide(json)
  if (!parsed.ok) {
    const [first, ...others] = parsed.problems.map((problem) => problem.sentence)
    return others.length === 0 ? refuse(first!) : refuse('These things are wrong in it:', [first!, ...others])
  }

  state.dismissNotice()
  const { ride } = parsed
  const own = state.ride?.id === ride.id ? state.ride : await savedRide(ride.id, shelf)
  if (!own) state.openRide(ride)
  else if (revisionOf(shareable(own)) === revisionOf(shareable(ride))) state.openRide(own)
  else {
    state.receiveRide(ride)
    state.notify({
      kind: 'info',
      sentence: `“${own.title}” on this machine differs from the file, so the file is shown read-only. Keep a copy to have both.`,
    })
  }
}

async function savedRide(id: string, shelf: RideShelf | null) {
  const listed = await shelf?.list().catch(() => [])
  if (!listed?.some((saved) => saved.id === id)) return null
  const loaded = await shelf?.load(id).catch(() => null)
  return loaded?.ok ? loaded.ride : null
}

const textOf = (file: File): Promise<string | null> => file.text().catch(() => null)

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
