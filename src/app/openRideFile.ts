import { contentRevision } from '#plan/document/contentRevision.ts'
import { jsonOf } from '#plan/document/jsonOf.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { isBackup } from '#plan/kept/backup.ts'
import { descendedFrom, editionOf } from '#plan/merge/lineage.ts'
import type { Ride } from '#plan/model.ts'
import type { RideShelf } from '#store/ports.ts'
import type { AppStore } from '#store/state.ts'
import { tell, words } from '#words/words.ts'

/** Largest file looked at, in bytes; a long ride with every word written out takes a fiftieth. */
const LARGEST = 8_000_000
/** The same for a backup; one of two hundred rides with their versions takes a fifth. */
const LARGEST_BACKUP = 100_000_000
/** A second download of the same day gets a number before its ending: "….backup (1).json". */
const BACKUP_NAME = /\.backup\b[^.]*\.json$/i

/**
 * Opens a ride from a file. One that nobody here knows becomes a ride of one's own; one that
 * is on the shelf and says the same is opened from there; one that says something else, or is
 * a copy of one that is there, is shown read-only, so that neither of the two is lost. What cannot be opened is said in a notice.
 */
export async function openRideFile(file: File, store: AppStore, shelf: RideShelf | null): Promise<void> {
  const state = store.getState()
  const { documents } = words
  const refuse = (why: string, details?: string[]) =>
    state.notify({ kind: 'problem', sentence: documents.notOpened({ file: file.name, why }), details })
  if (file.size > (BACKUP_NAME.test(file.name) ? LARGEST_BACKUP : LARGEST)) return refuse(documents.fileTooLarge)

  const text = await textOf(file)
  if (text === null) return refuse(documents.fileUnreadable)
  const json = jsonOf(text)
  if (json === undefined) return refuse(documents.fileOfOther)
  if (isBackup(json)) return state.receiveBackup(json, file.name)
  const parsed = parseRide(json)
  if (!parsed.ok) {
    const [first, ...others] = parsed.problems.map((problem) => tell(problem.text))
    return others.length === 0 ? refuse(first!) : refuse(documents.filePartlyWrong, [first!, ...others])
  }

  state.dismissNotice()
  const { ride } = parsed
  const own = state.ride?.id === ride.id ? state.ride : await savedRide(ride.id, shelf)
  if (own && contentRevision(own) === contentRevision(ride)) return state.openRide(own)
  const related = own ?? (await state.ownRideFor(ride))
  if (!related) return adopt(ride, store)
  state.receiveRide(ride)
  state.notify({
    kind: 'info',
    sentence: documents.fileDiffers({ title: related.title }),
  })
}

/** Makes a ride nobody here knows one's own; it can still be told apart from what it was when either comes back changed. */
function adopt(ride: Ride, store: AppStore): void {
  store.getState().openRide(descendedFrom(ride, [editionOf(ride)]))
  void store.getState().noteReceived(ride, ride.id)
}

async function savedRide(id: string, shelf: RideShelf | null) {
  const listed = await shelf?.list().catch(() => [])
  if (!listed?.some((saved) => saved.id === id)) return null
  const loaded = await shelf?.load(id).catch(() => null)
  return loaded?.ok ? loaded.ride : null
}

const textOf = (file: File): Promise<string | null> => file.text().catch(() => null)
