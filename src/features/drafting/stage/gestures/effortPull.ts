import { LEVEL_HEIGHT } from '#features/drafting/stage/chartFrame.ts'
import type { Block } from '#plan/model.ts'
import type { Effort } from '#units/units.ts'

/** What is held of a block's part of the curve: one end, or all of it. */
export type CurvePart = 'from' | 'level' | 'to'

/** Levels that a pulled effort falls on: halves, and tenths with the finer grip. */
const STEP = { coarse: 0.5, fine: 0.1 } as const

/**
 * The effort of a block whose part of the curve is pulled, always within 0 and 10. A pulled end falls on a half level, or on
 * a tenth with `fine`. All of it keeps the difference of its ends: the start falls on the step, and nothing goes past where
 * the higher or the lower end meets the limit.
 *
 * @param up how far it is pulled, in pixels, up being positive
 */
export function pulledEffort(effort: Block['effort'], part: CurvePart, up: number, fine: boolean): Block['effort'] {
  return withLevel(effort, part, onStep(effort[part === 'to' ? 'to' : 'from'] + up / LEVEL_HEIGHT, fine))
}

/** The effort with one end at a level, or with its start there and its end as far from it as before. */
export function withLevel({ from, to }: Block['effort'], part: CurvePart, level: Effort): Block['effort'] {
  const within = (value: number) => Math.min(10, Math.max(0, value))
  if (part === 'from') return { from: within(level), to }
  if (part === 'to') return { from, to: within(level) }
  const by = Math.min(10 - Math.max(from, to), Math.max(-Math.min(from, to), level - from))
  return { from: hundredth(from + by), to: hundredth(to + by) }
}

function onStep(level: number, fine: boolean): Effort {
  const step = fine ? STEP.fine : STEP.coarse
  return hundredth(Math.round(level / step) * step)
}

/** Without what sums of tenths leave behind in a floating number. */
const hundredth = (level: number): number => Math.round(level * 100) / 100
