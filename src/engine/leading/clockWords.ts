import { formatDuration } from '#units/formatDuration.ts'
import type { Seconds } from '#units/units.ts'
import type { LeadState } from './leadState.ts'

/** A leader does not act on less. */
const NOTICED: Seconds = 5

/**
 * Where the class stands against its slot, in plain words: "24 s to spare", "4:00 behind, 2:43 over
 * the slot", "1:10 ahead, 2:27 to spare". Seconds are those left in full, so that what is to spare
 * really is.
 */
export function clockWords({ behind, spare }: Pick<LeadState, 'behind' | 'spare'>): string {
  const slot = saySpare(spare)
  if (Math.abs(behind) < NOTICED) return slot
  return `${formatDuration(Math.floor(Math.abs(behind)))} ${behind > 0 ? 'behind' : 'ahead'}, ${slot}`
}

/** "24 s to spare", "2:43 over the slot", "ends on time" within a second. */
export function saySpare(spare: Seconds): string {
  if (spare >= 1) return `${formatDuration(Math.floor(spare))} to spare`
  return spare > -1 ? 'ends on time' : `${formatDuration(Math.ceil(-spare - 1e-6))} over the slot`
}
