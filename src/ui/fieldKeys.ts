import { say, type Text } from '#words/said.ts'
/** What takes a text that was typed; in a field of several lines it is a new line. */
export const TAKES_TEXT = 'Enter'
/** What drops it. */
export const DROPS_TEXT = 'Escape'
/** What steps a quantity, where it can be stepped. */
export const STEPS_UP = 'ArrowUp'
export const STEPS_DOWN = 'ArrowDown'

/** For a map of keys. */
export const FIELD_KEYS: readonly { keys: readonly string[]; does: Text }[] = [
  { keys: [TAKES_TEXT], does: say('actions.takeText') },
  { keys: [DROPS_TEXT], does: say('actions.dropText') },
  { keys: [STEPS_UP, STEPS_DOWN], does: say('actions.stepNumber') },
]
