import { speechOf } from '#engine/speech/speechOf.ts'
import type { AppState, SetState } from './state.ts'

/** What a leader keeps for every ride on this machine. */
export interface HabitsSlice {
  /** Form points of the leader's own, offered in turn; null where there are none. */
  formPoints: readonly string[] | null
  /** Replaces them; without any, those of the trade are offered again. */
  setFormPoints: (points: readonly string[]) => void
}

export function createHabitsSlice(set: SetState): HabitsSlice {
  return {
    formPoints: null,
    setFormPoints: (points) => set({ formPoints: points.length === 0 ? null : points }),
  }
}

/** The leader's own form points, else those of the trade in the language of the open ride. */
export const formPointsOffered = ({ formPoints, ride }: Pick<AppState, 'formPoints' | 'ride'>): readonly string[] =>
  formPoints ?? speechOf(ride ?? {}).sentences.formPoints
