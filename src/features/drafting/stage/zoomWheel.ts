import type { KeyRow } from '#actions/action.ts'
import { say } from '#words/said.ts'

/** How much closer a turn of the wheel comes, with the key held by which browsers zoom; null where the wheel scrolls. */
export const zoomOfWheel = ({ ctrlKey, metaKey, deltaY }: WheelEvent): number | null =>
  ctrlKey || metaKey ? Math.exp(-deltaY / 300) : null

/** For the key map. */
export const ZOOM_WHEEL: KeyRow = { keys: ['Ctrl+wheel'], does: say('actions.zoomAtPointer') }
