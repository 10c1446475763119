import { FORM_POINTS } from '#engine/cues/formPoints.ts'
import type { SetState } from './state.ts'

/** What a leader keeps for every ride on this machine. */
export interface HabitsSlice {
  /** Form points of the leader's own, offered in turn. */
  formPoints: readonly string[]
  /** Replaces them; without any, those of the trade are offered again. */
  setFormPoints: (points: readonly string[]) => void
}

export function createHabitsSlice(set: SetState): HabitsSlice {
  return {
    formPoints: FORM_POINTS,
    setFormPoints: (points) => set({ formPoints: points.length === 0 ? FORM_POINTS : points }),
  }
}
