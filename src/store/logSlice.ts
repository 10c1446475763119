import { contentRevision } from '#plan/document/contentRevision.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import type { Ride } from '#plan/model.ts'
import { words } from '#words/words.ts'
import { keptCollection } from './keptCollection.ts'
import type { TaughtShelf } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** The classes taught, as they were. */
export interface LogSlice {
  /** Newest first. */
  taught: readonly TaughtClass[]
  /** Whether a log can be kept. */
  keepsLog: boolean
  /** The entry deleted last, until it is put back or another goes. */
  removedTaught: TaughtClass | null
  /** An entry for the class that was led is asked for, and not open yet. */
  entryAsked: boolean

  /** Reads the log anew; what goes wrong is said in a notice. */
  refreshTaught: () => Promise<void>
  /** Keeps an entry, in place of the one with its id. False when it could not be kept, which is said. */
  keepTaught: (entry: TaughtClass) => Promise<boolean>
  removeTaught: (id: string) => Promise<void>
  /** Puts the entry deleted last back. */
  restoreTaught: () => Promise<void>
  /** Goes to the log, to an entry for the class that was led. */
  askForEntry: () => void
  /** The entry that was asked for is open. */
  entryOpened: () => void
}

export function createLogSlice(set: SetState, get: GetState, shelf: TaughtShelf | null): LogSlice {
  const log = keptCollection(
    get,
    shelf?.list,
    (taught) => set({ taught }),
    () => words.log.unreadable,
  )

  /** The ride an entry is of, as it was taught: where it is still at hand. */
  const rideOf = ({ rideId, revision }: TaughtClass): Ride | undefined => {
    const { lastLed, leading, ride } = get()
    return (
      [lastLed?.plan.ride, leading?.plan.ride, ride].find((one) => one?.id === rideId && contentRevision(one) === revision) ?? undefined
    )
  }

  const keepTaught = async (entry: TaughtClass): Promise<boolean> => {
    const ride = rideOf(entry)
    const kept = await keepEntry(entry)
    if (kept && ride) await get().noteTaught(ride)
    return kept
  }

  const keepEntry = async (entry: TaughtClass): Promise<boolean> => {
    const isNew = !get().taught.some(({ id }) => id === entry.id)
    return log.change(words.log.notKept, async () => {
      await shelf!.save(entry)
      const { lastLed, notice } = get()
      // What was led is logged now: the next entry is another class.
      if (isNew && lastLed?.plan.ride.id === entry.rideId) {
        set({ lastLed: null })
        if (notice?.offer && 'entry' in notice.offer) get().dismissNotice()
      }
      return words.log.kept(entry)
    })
  }

  return {
    taught: [],
    keepsLog: shelf !== null,
    removedTaught: null,
    entryAsked: false,
    refreshTaught: async () => void (await log.refresh()),
    keepTaught,
    removeTaught: async (id) => {
      const entry = get().taught.find((other) => other.id === id)
      if (!entry) return
      await log.change(words.log.notRemoved, async () => {
        await shelf!.remove(id)
        set({ removedTaught: entry })
        return words.log.removed(entry)
      })
    },
    restoreTaught: async () => {
      const entry = get().removedTaught
      if (entry && (await keepTaught(entry))) set({ removedTaught: null })
    },
    askForEntry: () => {
      set({ entryAsked: true })
      get().setPlace('log')
    },
    entryOpened: () => set({ entryAsked: false }),
  }
}
