import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { keptCopy } from './copyOfRide.ts'
import type { ReportOf } from './reportCache.ts'
import { shownAs } from './rideSlice.ts'
import { NOTHING_SELECTED } from './selectionSlice.ts'
import type { AppState, GetState, SetState } from './state.ts'

export type Place = 'start' | 'draft' | 'sheet' | 'lead' | 'handover' | 'merge' | 'setup' | 'log' | 'songs'

/** Places that are there without a ride. */
export const standsAlone = (place: Place): boolean => place === 'start' || place === 'log' || place === 'songs'

/** Where the user is, and which ride came in by which door. */
export interface PlaceSlice {
  place: Place
  /** A ride from a link or a file: shown in place of the open one, unchangeable until a copy is kept. */
  received: { ride: Ride; report: RideReport /** The link it came in, from its # on. */; fragment: string | null } | null

  setPlace: (place: Place) => void
  /** Opens a ride of one's own for drafting; the way back of the ride before it ends. */
  openRide: (ride: Ride, place?: Place) => void
  closeRide: () => void
  /** Shows a ride that came from elsewhere, by a link or not; the open ride stays as it is behind it. */
  receiveRide: (ride: Ride, place?: Place, fragment?: string) => void
  /** Makes a received ride one's own: a new id, and where it came from. */
  keepCopy: () => void
  /** Puts a received ride away; the open ride is shown again. */
  dismissReceived: () => void
}

export function createPlaceSlice(set: SetState, get: GetState, reportOf: ReportOf, newId: () => string): PlaceSlice {
  return {
    place: 'start',
    received: null,

    setPlace: (place) => {
      get().dropPreview()
      set({ place })
    },
    openRide: (ride, place = 'draft') => set({ ...opened(ride, reportOf(ride)), place }),
    closeRide: () => set({ ...opened(null, null), place: 'start' }),
    receiveRide: (ride, place = 'draft', fragment) => {
      get().dropPreview()
      const report = reportOf(ride)
      set({
        received: { ride, report, fragment: fragment ?? null },
        shown: ride,
        shownReport: report,
        selection: NOTHING_SELECTED,
        view: null,
        place,
      })
    },
    keepCopy: () => {
      const { received } = get()
      if (!received) return
      const copy = keptCopy(received.ride, newId())
      get().openRide(copy, get().place)
      void get().noteReceived(received.ride, copy.id)
    },
    dismissReceived: () => {
      const { received, ride, report } = get()
      if (!received) return
      set({ ...shownAs(ride, report), received: null, selection: NOTHING_SELECTED, view: null, place: ride ? 'draft' : 'start' })
    },
  }
}

/** True while a ride from elsewhere is shown: nothing can be changed before a copy is kept. */
export const isReadOnly = (state: AppState): boolean => state.received !== null

/** A ride freshly opened: no way back, nothing chosen, shown whole. */
const opened = (ride: Ride | null, report: RideReport | null) => ({
  ...shownAs(ride, report),
  past: [],
  future: [],
  received: null,
  selection: NOTHING_SELECTED,
  view: null,
})
