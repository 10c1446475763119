import type { KeyRow } from '#actions/action.ts'
import { say } from '#words/said.ts'

const FORWARD: readonly string[] = ['ArrowRight', 'ArrowDown', 'PageDown', 'Space', 'Enter']
const BACK: readonly string[] = ['ArrowLeft', 'ArrowUp', 'PageUp', 'Backspace']

/** Where a key turns to; null for a key of something else. */
export function turnOf(key: string): 1 | -1 | null {
  const name = key === ' ' ? 'Space' : key
  return FORWARD.includes(name) ? 1 : BACK.includes(name) ? -1 : null
}

/** For the key map. */
export const SCAN_KEYS: readonly KeyRow[] = [
  { keys: FORWARD, does: say('sheet.on') },
  { keys: BACK, does: say('sheet.back') },
]
