import { constantsOf } from '#engine/constants.ts'
import { countWords } from '#engine/cues/countWords.ts'
import { speechSeconds, wordsPerSecond } from '#engine/cues/speechRate.ts'
import { utteranceOf } from '#engine/cues/utterance.ts'
import type { RideReport } from '#engine/report.ts'
import type { ComingClass } from '#engine/speech/speech.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'

/** What is said before the first song, timed. */
export interface OpeningCard {
  /** What is coming, and how to find one's own way through it. */
  sentences: [coming: string, rule: string]
  words: number
  /** How long the first leader takes to say both, calmly. */
  seconds: Seconds
  /** Whether the briefing is long enough for them. */
  fits: boolean
}

/**
 * Two sentences made from the plan: how long the class is, how many hard efforts it has, the
 * longest and where the hardest comes; then what holds for every rider in this room.
 */
export function openingCard(ride: Ride, report: Pick<RideReport, 'blocks' | 'recovery' | 'measures'>): OpeningCard {
  const speech = speechOf(ride)
  const { coming, atHome, inTheRoom } = speech.sentences
  const sentences: OpeningCard['sentences'] = [coming(comingClass(report)), ride.room === 'online' ? atHome : inTheRoom]
  const words = sentences.reduce((sum, sentence) => sum + countWords(sentence, speech), 0)
  const rules = constantsOf(ride)
  // Each sentence has its own pause.
  const rate = wordsPerSecond(ride.leaders[0]!.wordsPerMinute, 0, rules)
  const seconds = sentences.reduce((sum, sentence) => sum + speechSeconds(utteranceOf(sentence, speech), rate, rules), 0)
  return { sentences, words, seconds, fits: seconds <= ride.briefingSeconds }
}

/** Minutes are those of the riding, which is what riders count: from the first one on, with no briefing and no clearing up. */
function comingClass({ blocks, recovery: { bouts }, measures }: Pick<RideReport, 'blocks' | 'recovery' | 'measures'>): ComingClass {
  const first = blocks[0]?.from ?? 0
  const { longestHard, lastHardest } = measures
  return {
    minutes: Math.max(1, Math.round(((blocks.at(-1)?.to ?? first) - first) / 60)),
    efforts: bouts.length,
    longest: roundedUp(longestHard),
    hardestAt: lastHardest === null ? null : Math.max(1, Math.round((lastHardest - first) / 60)),
  }
}

/** So that "none longer than" is true: to five seconds under a minute, else to half minutes. */
function roundedUp(seconds: Seconds): Seconds {
  const fives = Math.ceil(seconds / 5 - DRIFT) * 5
  return fives < 60 ? Math.max(5, fives) : 30 * Math.ceil(seconds / 30 - DRIFT)
}

/** Absorbs float drift: 30.0000001 s is thirty. */
const DRIFT = 1e-6
