import type { RideReport } from '#engine/report.ts'
import type { Command } from '#plan/commands/command.ts'
import { sameValue } from '#plan/edits.ts'
import { mergeWindows } from '#plan/merge/mergeWindows.ts'
import type { Ride } from '#plan/model.ts'
import type { Text } from '#words/said.ts'
import { tell, words } from '#words/words.ts'
import { announced } from './noticeSlice.ts'
import type { ReportOf } from './reportCache.ts'
import { prunedSelection, type Selection } from './selectionSlice.ts'
import type { AppState, GetState, SetState } from './state.ts'

/** Steps that can be undone. */
const UNDO_LIMIT = 200

/** A change that was made, and the ride on the other side of it with what was chosen in it. */
export interface Step {
  label: Text
  /** Milliseconds since 1970 at which it was made; absent where nobody has a clock. */
  at?: number
  ride: Ride
  selection: Selection
  /** The ride on this side of it, where another window has changed that since. */
  from?: Ride
}

/** The open ride, what is shown of it, and the way back. */
export interface RideSlice {
  /** The ride as committed: what is saved and linked. */
  ride: Ride | null
  /** The state in storage that the ride was made from: as it was opened, then as it was last saved. */
  base: Ride | null
  report: RideReport | null
  /** What the screen draws: a received ride, else the preview, else the ride. */
  shown: Ride | null
  shownReport: RideReport | null
  /** Label of the change being previewed. */
  previewing: Text | null
  /** The preview is an offer that stands to be looked at, and not a passing one under the pointer. */
  offering: boolean
  past: readonly Step[]
  future: readonly Step[]

  /** Applies a command as one undo step; a preview is dropped first. False when it changes nothing or no ride is open for changes. */
  run: (command: Command) => boolean
  /** Shows what a command would do to the committed ride, in place of any preview before it; `offer` where it stands to be looked at. */
  preview: (command: Command, kind?: 'passing' | 'offer') => void
  /** Makes the preview the ride, as one undo step. False when there is none. */
  commitPreview: () => boolean
  dropPreview: () => void
  /** False when there is nothing to undo. */
  undo: () => boolean
  redo: () => boolean
  /**
   * Takes back several steps at once, the latest first, or below zero makes them again; planned once, and announced once.
   * False when there are fewer, or none is meant.
   */
  travelBy: (steps: number) => boolean
  /**
   * Notes what is in storage now, and takes in what another window brought to it. The way back stays: it leads past
   * the other window's changes, never over them.
   *
   * @param saved the ride as this window gave it to storage
   * @param stored what storage has for it
   */
  follow: (saved: Ride, stored: Ride) => void
}

export function createRideSlice(set: SetState, get: GetState, reportOf: ReportOf, now?: () => number): RideSlice {
  return {
    ride: null,
    base: null,
    report: null,
    shown: null,
    shownReport: null,
    previewing: null,
    offering: false,
    past: [],
    future: [],

    run: (command) => {
      get().dropPreview()
      const { ride, received, selection } = get()
      if (!ride || received) return false
      const next = command.apply(ride)
      if (next === ride) return false
      set(committed(get(), { label: command.label, ...made(), ride, selection }, next, reportOf(next)))
      return true
    },

    preview: (command, kind = 'passing') => {
      const { ride, received } = get()
      if (!ride || received) return
      const next = command.apply(ride)
      if (next === ride) return get().dropPreview()
      set({ shown: next, shownReport: reportOf(next), previewing: command.label, offering: kind === 'offer' })
    },

    commitPreview: () => {
      const { ride, shown, shownReport, previewing, selection } = get()
      if (previewing === null || !ride || !shown || !shownReport) return false
      set(committed(get(), { label: previewing, ...made(), ride, selection }, shown, shownReport))
      return true
    },

    dropPreview: () => {
      const { ride, report, previewing } = get()
      if (previewing !== null) set(shownAs(ride, report))
    },

    undo: () => travelBy(1),
    redo: () => travelBy(-1),
    travelBy,

    follow: (saved, stored) => {
      const { ride, shown, previewing, received, past, future, selection } = get()
      if (ride?.id !== stored.id) return
      const next = ride === saved ? stored : mergeWindows(saved, ride, stored).merged
      if (next === ride) return set({ base: stored })
      const report = reportOf(next)
      const drawn = previewing === null || !shown ? null : mergeWindows(ride, shown, next).merged
      set({
        ...(received ? { ride: next, report } : shownAs(next, report)),
        ...(drawn && !received && { shown: drawn, shownReport: reportOf(drawn), previewing, offering: get().offering }),
        base: stored,
        past: leadingFrom(past, ride),
        future: leadingFrom(future, ride),
        selection: received ? selection : prunedSelection(selection, next),
      })
    },
  }

  function made(): Pick<Step, 'at'> {
    return now ? { at: now() } : {}
  }

  function travelBy(steps: number): boolean {
    get().dropPreview()
    const state = get()
    const [from, to, how] = steps > 0 ? (['past', 'future', 'undone'] as const) : (['future', 'past', 'redone'] as const)
    const count = Math.abs(steps)
    if (!state.ride || state.received || !Number.isInteger(steps) || count === 0 || state[from].length < count) return false
    let way: Way = { ride: state.ride, left: state[from], gone: state[to], selection: state.selection }
    for (let step = 0; step < count; step++) way = stepped(way)
    const { ride, left, gone, selection } = way
    const change = tell(state[from].at(-count)!.label)
    const sayTravel = () => {
      if (sameValue(ride, state.ride)) return words.app.overruled({ change })
      return count === 1 ? words.app[how]({ change }) : words.undoList[how === 'undone' ? 'undid' : 'redid']({ count })
    }
    set({
      ...shownAs(ride, reportOf(ride)),
      past: from === 'past' ? left : gone,
      future: from === 'past' ? gone : left,
      selection,
      ...announced(state, sayTravel()),
    })
    return true
  }
}

/** A ride with the steps to be taken on from it, the nearest last, and those that were. */
interface Way {
  ride: Ride
  left: readonly Step[]
  gone: readonly Step[]
  selection: Selection
}

/** The last step taken off one pile, and its other side put on the other. */
function stepped({ ride, left: pile, gone, selection }: Way): Way {
  const step = pile.at(-1)!
  // Past what came in since, the step is taken back as a change of its own; what another window changed there stands.
  const target = step.from && step.from !== ride ? mergeWindows(step.from, ride, step.ride).merged : step.ride
  const left = pile.slice(0, -1)
  const { label, at } = step
  return {
    ride: target,
    left: target === step.ride ? left : leadingFrom(left, step.ride),
    gone: [...gone, { label, ...(at !== undefined && { at }), ride, selection }],
    // Back to what the step was about: what was deleted is chosen again as it comes back.
    selection: prunedSelection(step.selection.sectionId === null ? selection : step.selection, target),
  }
}

/** The pile with its last step leading from the ride it was made for, although another is open now. */
function leadingFrom(pile: readonly Step[], from: Ride): readonly Step[] {
  const last = pile.at(-1)
  return last === undefined || last.from ? pile : pile.with(-1, { ...last, from })
}

/** The fields that say which ride is open, with nothing previewed. */
export const shownAs = (ride: Ride | null, report: RideReport | null) => ({
  ride,
  report,
  shown: ride,
  shownReport: report,
  previewing: null,
  offering: false,
})

function committed(state: AppState, step: Step, next: Ride, report: RideReport): Partial<AppState> {
  return {
    ...shownAs(next, report),
    isDemo: false,
    past: [...state.past, step].slice(-UNDO_LIMIT),
    future: [],
    selection: prunedSelection(state.selection, next),
    ...announced(state, tell(step.label)),
  }
}
