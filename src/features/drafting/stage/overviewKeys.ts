import type { KeyRow } from '#actions/action.ts'
import { say } from '#words/said.ts'

const EARLIER = 'ArrowLeft'
const LATER = 'ArrowRight'

/** How far the window on the small curve goes with a key, in quarters of its width; null for a key of something else. */
export const strideOf = (key: string): 1 | -1 | null => (key === EARLIER ? -1 : key === LATER ? 1 : null)

/** For the key map. */
export const OVERVIEW_KEYS: KeyRow = { keys: [EARLIER, LATER], does: say('actions.overview') }

/** How much of the window a key takes an edge of it by. */
export const EDGE_STRIDE = 1 / 8

/** For the key map. */
export const OVERVIEW_EDGE_KEYS: KeyRow = { keys: [EARLIER, LATER], does: say('gestures.overviewEdgeKeys') }
