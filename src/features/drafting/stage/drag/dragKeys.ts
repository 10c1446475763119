import type { KeyRow } from '#actions/action.ts'
import { say } from '#words/said.ts'

/** Lets go of what is dragged, and leaves the ride as it was; the drag library has the same key. */
export const LETS_GO = 'Escape'

/** For the key map. */
export const DRAG_KEYS: readonly KeyRow[] = [
  { keys: [LETS_GO], does: say('actions.letGo') },
  { keys: ['Alt+drag'], does: say('gestures.fineDo') },
  { keys: ['Shift+drag'], does: say('gestures.frameDo') },
  { keys: ['Space+drag', 'middleDrag'], does: say('gestures.panDo') },
]
