import type { Seconds } from '#units/units.ts'
import type { SetState } from './state.ts'

export type Theme = 'auto' | 'light' | 'dark'

/** The stretch of the ride on the stage. */
export interface ViewWindow {
  fromSeconds: Seconds
  toSeconds: Seconds
}

/** Lines that can be drawn over the asked effort. */
export const CHART_LINES = ['demand', 'heart', 'reserve', 'strain'] as const
export type ChartLine = (typeof CHART_LINES)[number]

/** Whose lines are drawn: the rider the ride is judged for, one by id, or all of them as a band. */
export type ShownRider = 'reference' | 'all' | (string & {})

/** What of the room and its people is looked at. */
export type SetupPart = 'bike' | 'riders' | 'rules'

export interface ViewSlice {
  lines: Readonly<Record<ChartLine, boolean>>
  shownRider: ShownRider
  theme: Theme
  /** Null shows the whole ride. */
  view: ViewWindow | null
  setupPart: SetupPart
  /** The details of the ride were asked for and are not shown yet. */
  rideDetailsAsked: boolean

  toggleLine: (line: ChartLine) => void
  showRider: (rider: ShownRider) => void
  setTheme: (theme: Theme) => void
  showSetupPart: (part: SetupPart) => void
  /** A window that is empty or no stretch of time shows the whole ride. */
  setView: (view: ViewWindow | null) => void
  askRideDetails: () => void
  answerRideDetails: () => void
}

export function createViewSlice(set: SetState): ViewSlice {
  return {
    lines: { demand: true, heart: true, reserve: false, strain: false },
    shownRider: 'reference',
    theme: 'auto',
    view: null,
    setupPart: 'bike',
    rideDetailsAsked: false,
    toggleLine: (line) => set(({ lines }) => ({ lines: { ...lines, [line]: !lines[line] } })),
    showRider: (shownRider) => set({ shownRider }),
    setTheme: (theme) => set({ theme }),
    showSetupPart: (setupPart) => set({ setupPart }),
    setView: (view) => set({ view: view && view.toSeconds > view.fromSeconds ? view : null }),
    askRideDetails: () => set({ rideDetailsAsked: true }),
    answerRideDetails: () => set({ rideDetailsAsked: false }),
  }
}
