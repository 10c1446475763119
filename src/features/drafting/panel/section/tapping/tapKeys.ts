import type { KeyRow } from '#actions/action.ts'
import { say } from '#words/said.ts'
import type { Tap } from './useTaps.ts'

/** Keys that are not for tapping: they move about, or belong to the browser. */
const NO_TAPS = /^(?:Tab|Enter|Escape|Shift|Control|Alt|AltGraph|Meta|CapsLock|Arrow\w+|F\d+|Page\w+|Home|End)$/

const START = '0'
const ONE = '1'
const CLEARS: readonly string[] = ['Backspace', 'Delete']

/** What a key means on the pad: a tap of a kind, starting over, or nothing. */
export function tapOf(key: string): Tap | 'clear' | null {
  if (NO_TAPS.test(key)) return null
  if (CLEARS.includes(key)) return 'clear'
  return key === START ? 'start' : key === ONE ? 'one' : 'beat'
}

/** For the key map. */
export const TAP_KEYS: readonly KeyRow[] = [
  { keys: ['A–Z', 'Space'], does: say('panelsSong.keyBeat') },
  { keys: [START], does: say('panelsSong.keyStart') },
  { keys: [ONE], does: say('panelsSong.keyOne') },
  { keys: CLEARS, does: say('panelsSong.keyAgain') },
]
