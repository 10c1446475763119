import { ledClass } from '#engine/leading/ledClass.ts'
import type { Bike } from '#plan/model.ts'
import type { Leading } from './leadSlice.ts'
import type { ReportOf } from './reportCache.ts'
import type { AppState, GetState, SetState } from './state.ts'

/** Which bike rides are read on. It belongs to who looks, so it is kept in the browser and in no ride. */
export interface ShownOnSlice {
  /** Null: every ride on its own bike. */
  readOn: Bike | null

  /** Words all that is open for another bike, or for its own again. */
  showOn: (bike: Bike | null) => void
}

export function createShownOnSlice(set: SetState, get: GetState, reportOf: ReportOf): ShownOnSlice {
  return {
    readOn: null,
    showOn: (readOn) => {
      get().dropPreview()
      set({ readOn })
      set((state) => worded(state, reportOf))
    },
  }
}

/** The reports of all that is open, as they read now. */
function worded({ ride, shown, received, leading }: AppState, reportOf: ReportOf): Partial<AppState> {
  return {
    report: ride && reportOf(ride),
    shownReport: shown && reportOf(shown),
    received: received && { ...received, report: reportOf(received.ride) },
    leading: leading && ledAnew(leading, reportOf),
  }
}

function ledAnew(leading: Leading, reportOf: ReportOf): Leading {
  const plan = { ...leading.plan, report: reportOf(leading.plan.ride) }
  return { ...leading, plan, led: leading.log && ledClass(plan, leading.log) }
}
