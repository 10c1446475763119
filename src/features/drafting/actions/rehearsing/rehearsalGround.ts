import type { Action, Ground } from '#actions/action.ts'
import type { Rehearsing } from '#features/drafting/rehearsal/RehearsalContext.ts'

/** What the actions of a rehearsal are done on. */
export interface RehearsalGround extends Ground {
  rehearsing: Rehearsing
}

export type RehearsalAction = Action<RehearsalGround>

/** The bar stands at the foot of the page. */
export const isOpen = ({ rehearsing }: RehearsalGround): boolean => rehearsing.rehearsal.snapshot().open
