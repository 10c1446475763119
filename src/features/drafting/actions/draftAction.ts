import type { Action } from '#actions/action.ts'
import type { DraftGround, Target } from './draftGround.ts'

/** An action of the draft. */
export interface DraftAction extends Action<DraftGround> {
  /** Over whose details its button stands in the row of what can be done there. */
  over?: readonly Target['kind'][]
}

/** The target as one item of the ride: a block, a set, or the one of several that was chosen last. */
export const itemOf = ({ target }: DraftGround) => (target.kind === 'ride' || target.kind === 'section' ? null : target)
