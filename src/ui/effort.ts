/** Highest level of effort; levels are 0–10, in our own neutral words. */
export const EFFORT_LEVELS = 10

/**
 * The colour of an effort, as a CSS value made of the palette's tokens.
 *
 * @param level 0–10, whole or not; values outside are held at the ends. Between two levels
 * the colour is mixed in OKLCH, so that lightness, which carries the meaning, stays straight.
 */
export function effortColour(level: number): string {
  const held = Math.min(EFFORT_LEVELS, Math.max(0, level))
  const below = Math.floor(held)
  const share = Math.round((held - below) * 100)
  if (share === 0) return `var(--effort-${below})`
  if (share === 100) return `var(--effort-${below + 1})`
  return `color-mix(in oklch, var(--effort-${below}), var(--effort-${below + 1}) ${share}%)`
}

/**
 * Background and text for words that stand on an effort. The level is rounded to a whole one
 * first: between 6 and 7, where text turns from ink to white, no text colour would reach 4.5:1.
 */
export function effortPair(level: number): { background: string; color: string } {
  const whole = Math.min(EFFORT_LEVELS, Math.max(0, Math.round(level)))
  return { background: `var(--effort-${whole})`, color: `var(--effort-text-${whole})` }
}
