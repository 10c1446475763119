import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { copyOfRide, keptCopy } from './copyOfRide.ts'
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

  /** The open ride is a copy of a demo ride that nobody has changed: it is kept nowhere until it is changed, goes out, gets a version, or another ride is made from it. */
  isDemo: boolean

  setPlace: (place: Place) => void
  /** Opens a ride of one's own for drafting; the way back of the ride before it ends. */
  openRide: (ride: Ride, place?: Place) => void
  /**
   * Opens a copy of a demo ride, or goes back to the one that is open and unchanged.
   *
   * @param id of the copy; a new one that names the demo ride unless given
   */
  openDemo: (demo: Ride, id?: string) => void
  /** Has the open ride kept, also where it is a demo ride as it came. */
  keepDemo: () => void
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
    isDemo: false,

    setPlace: (place) => {
      get().dropPreview()
      set({ place })
    },
    openRide: (ride, place = 'draft') => {
      // A ride leads back to the one it was made from, so that is kept as well.
      if (ride.parent?.rideId === get().ride?.id) get().keepDemo()
      set({ ...opened(ride, reportOf(ride)), place })
    },
    openDemo: (demo, id = demoCopyId(demo, newId())) => {
      const { isDemo, ride, received, setPlace, dismissReceived } = get()
      if (!isDemo || ride?.parent?.rideId !== demo.id) {
        const copy = copyOfRide(demo, id)
        set({ ...opened(copy, reportOf(copy)), isDemo: true, place: 'draft' })
      } else if (received) dismissReceived()
      else setPlace('draft')
    },
    keepDemo: () => {
      if (get().isDemo) set({ isDemo: false })
    },
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

/** An id that tells which demo ride a copy is of, so that its address opens it also while it is kept nowhere. */
const demoCopyId = (demo: Ride, id: string): string => `${demo.id}.${id}`

/** The id of the demo ride of which a ride with this id may be a copy; undefined where it is none. */
export const demoIdOf = (copyId: string): string | undefined => /^([^.]+)\../.exec(copyId)?.[1]

/** True while a ride from elsewhere is shown: nothing can be changed before a copy is kept. */
export const isReadOnly = (state: AppState): boolean => state.received !== null

/** A ride freshly opened: no way back, nothing chosen, shown whole. */
const opened = (ride: Ride | null, report: RideReport | null) => ({
  ...shownAs(ride, report),
  base: ride,
  past: [],
  future: [],
  received: null,
  isDemo: false,
  selection: NOTHING_SELECTED,
  view: null,
})
