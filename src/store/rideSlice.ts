import type { RideReport } from '#engine/report.ts'
import type { Command } from '#plan/commands/command.ts'
import type { Ride } from '#plan/model.ts'
import { announced } from './noticeSlice.ts'
import type { ReportOf } from './reportCache.ts'
import { prunedSelection } from './selectionSlice.ts'
import type { AppState, GetState, SetState } from './state.ts'

/** Steps that can be undone. */
export const UNDO_LIMIT = 200

/** A change that was made, and the ride as it stood on the other side of it. */
export interface Step {
  label: string
  ride: Ride
}

/** The open ride, what is shown of it, and the way back. */
export interface RideSlice {
  /** The ride as committed: what is saved and linked. */
  ride: Ride | null
  report: RideReport | null
  /** What the screen draws: a received ride, else the preview, else the ride. */
  shown: Ride | null
  shownReport: RideReport | null
  /** Label of the change being previewed. */
  previewing: string | null
  past: readonly Step[]
  future: readonly Step[]

  /** Applies a command as one undo step; a preview is dropped first. False when it changes nothing or no ride is open for changes. */
  run: (command: Command) => boolean
  /** Shows what a command would do to the committed ride, in place of any preview before it. */
  preview: (command: Command) => void
  /** Makes the preview the ride, as one undo step. False when there is none. */
  commitPreview: () => boolean
  dropPreview: () => void
  /** False when there is nothing to undo. */
  undo: () => boolean
  redo: () => boolean
}

export function createRideSlice(set: SetState, get: GetState, reportOf: ReportOf): RideSlice {
  return {
    ride: null,
    report: null,
    shown: null,
    shownReport: null,
    previewing: null,
    past: [],
    future: [],

    run: (command) => {
      get().dropPreview()
      const { ride, received } = get()
      if (!ride || received) return false
      const next = command.apply(ride)
      if (next === ride) return false
      set(committed(get(), { label: command.label, ride }, next, reportOf(next)))
      return true
    },

    preview: (command) => {
      const { ride, received } = get()
      if (!ride || received) return
      const next = command.apply(ride)
      if (next === ride) return get().dropPreview()
      set({ shown: next, shownReport: reportOf(next), previewing: command.label })
    },

    commitPreview: () => {
      const { ride, shown, shownReport, previewing } = get()
      if (previewing === null || !ride || !shown || !shownReport) return false
      set(committed(get(), { label: previewing, ride }, shown, shownReport))
      return true
    },

    dropPreview: () => {
      const { ride, report, previewing } = get()
      if (previewing !== null) set({ shown: ride, shownReport: report, previewing: null })
    },

    undo: () => travel('past', 'future', 'Undone'),
    redo: () => travel('future', 'past', 'Done again'),
  }

  /** Takes the last step off one pile and puts its other side on the other. */
  function travel(from: 'past' | 'future', to: 'past' | 'future', word: string): boolean {
    get().dropPreview()
    const state = get()
    const step = state[from].at(-1)
    if (!step || !state.ride || state.received) return false
    set({
      ...shownAs(step.ride, reportOf(step.ride)),
      past: state.past,
      future: state.future,
      [from]: state[from].slice(0, -1),
      [to]: [...state[to], { label: step.label, ride: state.ride }],
      selection: prunedSelection(state.selection, step.ride),
      ...announced(state, `${word}: ${step.label}`),
    })
    return true
  }
}

/** The fields that say which ride is open, with nothing previewed. */
export const shownAs = (ride: Ride | null, report: RideReport | null) => ({
  ride,
  report,
  shown: ride,
  shownReport: report,
  previewing: null,
})

function committed(state: AppState, step: Step, next: Ride, report: RideReport): Partial<AppState> {
  return {
    ...shownAs(next, report),
    isDemo: false,
    past: [...state.past, step].slice(-UNDO_LIMIT),
    future: [],
    selection: prunedSelection(state.selection, next),
    ...announced(state, step.label),
  }
}
