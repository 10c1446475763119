import type { Effort } from '#units/units.ts'

/**
 * Load of a session: effort (0–10) × minutes.
 * Source: Foster C et al., J Strength Cond Res 2001;15(1):109-115. There one rating for the
 * whole session; a plan has an effort for every block, and their sums add up.
 */
export const sessionLoad = (effort: Effort, minutes: number): number => effort * minutes
