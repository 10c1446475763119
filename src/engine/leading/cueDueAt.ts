import type { CueLine } from '#engine/cues/placeCues.ts'
import type { Seconds } from '#units/units.ts'

/**
 * The line that is to be said or has just been: from the moment its words start until the change
 * they belong to, words inside a block until they are over. Where two overlap the later one.
 */
export function cueDueAt(lines: readonly CueLine[], at: Seconds): { cue?: number } {
  const due = lines.findLastIndex(({ from, to, change, moment }) => from <= at && at < endOf(moment, to, change))
  return due < 0 ? {} : { cue: due }
}

/** Words said on the change itself stand a little longer, or nobody could read them. */
const AFTER_CHANGE: Seconds = 2

function endOf(moment: CueLine['moment'], to: Seconds, change: Seconds): Seconds {
  if (moment === 'form' || moment === 'story') return to
  return Math.max(change, to, moment === 'action' ? change + AFTER_CHANGE : change)
}
