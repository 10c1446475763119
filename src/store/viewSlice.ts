import type { Seconds } from '#units/units.ts'
import type { SetState } from './state.ts'

export type Theme = 'auto' | 'light' | 'dark'

/** The stretch of the ride on the stage. */
export interface ViewWindow {
  fromSeconds: Seconds
  toSeconds: Seconds
}

export interface ViewSlice {
  theme: Theme
  /** Null shows the whole ride. */
  view: ViewWindow | null

  setTheme: (theme: Theme) => void
  /** A window that is empty or no stretch of time shows the whole ride. */
  setView: (view: ViewWindow | null) => void
}

export function createViewSlice(set: SetState): ViewSlice {
  return {
    theme: 'auto',
    view: null,
    setTheme: (theme) => set({ theme }),
    setView: (view) => set({ view: view && view.toSeconds > view.fromSeconds ? view : null }),
  }
}
