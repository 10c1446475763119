import type { KeyRow } from '#actions/action.ts'
import { say } from '#words/said.ts'

/** Keys of the line in which cues are written, for the key map and under the line itself. */
export const CUE_LINE_KEYS: readonly KeyRow[] = [
  { keys: ['Enter'], does: say('cueLine.keyKeep') },
  { keys: ['ArrowDown', 'ArrowUp'], does: say('cueLine.keyChoose') },
  { keys: ['Tab'], does: say('cueLine.keyFill') },
  { keys: ['Alt+ArrowUp', 'Alt+ArrowDown'], does: say('cueLine.keyMoment') },
  { keys: ['Alt+Shift+ArrowUp', 'Alt+Shift+ArrowDown'], does: say('cueLine.keyMove') },
  { keys: ['PageUp', 'PageDown'], does: say('cueLine.keyBlock') },
  { keys: ['Escape'], does: say('cueLine.keyDrop') },
]
