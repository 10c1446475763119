import type { Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import type { LeadState } from './leadState.ts'

/** A leader does not act on less. */
const NOTICED: Seconds = 5

/**
 * Where the class stands against its slot, in plain words: "24 s to spare", "4:00 behind, 2:43 over
 * class time", "1:10 ahead, 2:27 to spare". Rounded as the length of the class is, so that the two add up.
 */
export const clockWords = ({ behind, spare }: Pick<LeadState, 'behind' | 'spare'>): Text =>
  say('led.clock', { behind: Math.abs(behind) < NOTICED ? 0 : behind, spare })
