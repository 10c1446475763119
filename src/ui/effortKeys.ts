import type { KeyboardEvent } from 'react'
import { say, type Text } from '#words/said.ts'
import { EFFORT_LEVELS } from './effort.ts'

const LEVEL = say('actions.effortLevel')
const TWO_LEVELS = say('actions.effortTwoLevels')
const ENDS = say('actions.effortEnds')

/** The keys on the scale of effort, and the value each leads to; `small` is a level, or half of one with Shift. */
const KEYS: readonly { keys: readonly string[]; does: Text; to: (value: number, small: number) => number }[] = [
  { keys: ['ArrowUp', 'ArrowRight'], does: LEVEL, to: (value, small) => value + small },
  { keys: ['ArrowDown', 'ArrowLeft'], does: LEVEL, to: (value, small) => value - small },
  { keys: ['PageUp'], does: TWO_LEVELS, to: (value) => value + 2 },
  { keys: ['PageDown'], does: TWO_LEVELS, to: (value) => value - 2 },
  { keys: ['Home'], does: ENDS, to: () => 0 },
  { keys: ['End'], does: ENDS, to: () => EFFORT_LEVELS },
]

/** For a map of keys. */
export const EFFORT_KEYS: readonly { keys: readonly string[]; does: Text }[] = [
  ...KEYS,
  { keys: ['0–9'], does: say('actions.effortDigit') },
]

/** The value that a key leads to; null for a key of something else. */
export function levelForKey(event: KeyboardEvent, value: number): number | null {
  if (event.altKey || event.ctrlKey || event.metaKey) return null
  const found = KEYS.find(({ keys }) => keys.includes(event.key))
  if (found) return found.to(value, event.shiftKey ? 0.5 : 1)
  return /^\d$/.test(event.key) ? Number(event.key) : null
}
