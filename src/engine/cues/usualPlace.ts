import type { Constants } from '#engine/constants.ts'
import { isInside, startLead } from '#plan/cueStart.ts'
import type { Cue, CueMoment } from '#plan/model.ts'
import type { Counts } from '#units/units.ts'

/** Off the beat a count is half a second. */
export const COUNTS_A_SECOND = 2

type Places = Pick<Constants, 'previewCounts' | 'announceCounts' | 'announceCountsMost' | 'announceSeconds' | 'countInCounts'>

/**
 * Where a cue of a moment goes that nobody has placed: by the studio's rules before its change, and words inside a block as
 * it begins.
 *
 * @param counted whether its section has beats
 * @param wordsEnd counts before the change by which its words have to be over
 */
export function usualLead(moment: CueMoment, rules: Places, counted: boolean, wordsEnd: Counts = 0): Cue['lead'] {
  if (isInside({ moment })) return startLead(counted ? 'counts' : 'seconds')
  if (moment === 'preview') return counted ? { counts: rules.previewCounts } : { seconds: rules.previewCounts / COUNTS_A_SECOND }
  if (moment !== 'announce') return counted ? { counts: 0 } : { seconds: 0 }
  return counted ? { counts: Math.max(rules.announceCounts, wordsEnd) } : { seconds: rules.announceSeconds }
}

/** How long a count-in is that nobody has set: as long as the studio counts, four or eight. */
export const usualCount = ({ countInCounts }: Places): 4 | 8 => (countInCounts > 4 ? 8 : 4)
