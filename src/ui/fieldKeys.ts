/** What takes a text that was typed; in a field of several lines it is a new line. */
export const TAKES_TEXT = 'Enter'
/** What drops it. */
export const DROPS_TEXT = 'Escape'
/** What steps a quantity, where it can be stepped. */
export const STEPS_UP = 'ArrowUp'
export const STEPS_DOWN = 'ArrowDown'

/** For a map of keys. */
export const FIELD_KEYS: readonly { keys: readonly string[]; does: string }[] = [
  { keys: [TAKES_TEXT], does: 'take what is typed' },
  { keys: [DROPS_TEXT], does: 'put back what was there' },
  { keys: [STEPS_UP, STEPS_DOWN], does: 'a step up, down in a number; a larger one with Shift' },
]
