import { formatDuration } from '#units/formatDuration.ts'
import type { Seconds } from '#units/units.ts'
import type { LeadState } from './leadState.ts'

/** A leader does not act on less. */
const NOTICED: Seconds = 5

/**
 * Where the class stands against its slot, in plain words: "24 s to spare", "4:00 behind, 2:43 over
 * the slot", "1:10 ahead, 2:27 to spare". Rounded as the length of the class is, so that the two add up.
 */
export function clockWords({ behind, spare }: Pick<LeadState, 'behind' | 'spare'>): string {
  const slot = saySpare(spare)
  if (Math.abs(behind) < NOTICED) return slot
  return `${formatDuration(Math.abs(behind))} ${behind > 0 ? 'behind' : 'ahead'}, ${slot}`
}

/** "24 s to spare", "2:43 over the slot", "ends on time" within a second. */
function saySpare(spare: Seconds): string {
  if (Math.abs(spare) < 1) return 'ends on time'
  return `${formatDuration(Math.abs(spare))} ${spare > 0 ? 'to spare' : 'over the slot'}`
}
