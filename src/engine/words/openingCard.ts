import { constantsOf } from '#engine/constants.ts'
import { countWords } from '#engine/cues/countWords.ts'
import { speechOf } from '#engine/cues/speech.ts'
import { speechSeconds, wordsPerSecond } from '#engine/cues/speechRate.ts'
import { numberWords } from '#engine/ledger/numberWords.ts'
import type { RideReport } from '#engine/report.ts'
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
  const sentences: OpeningCard['sentences'] = [coming(report), ride.room === 'online' ? AT_HOME : IN_THE_ROOM]
  const words = sentences.reduce((sum, sentence) => sum + countWords(sentence), 0)
  const rules = constantsOf(ride)
  // Each sentence has its own pause.
  const rate = wordsPerSecond(ride.leaders[0]!.wordsPerMinute, 0, rules)
  const seconds = sentences.reduce((sum, sentence) => sum + speechSeconds(speechOf(sentence), rate, rules), 0)
  return { sentences, words, seconds, fits: seconds <= ride.briefingSeconds }
}

/** Each rider's knob is another, and nobody is there to look (common practice). */
const AT_HOME = 'Your bike is not mine, so go by the feel I describe, stay in the saddle whenever you like, and stop if you are dizzy.'
const IN_THE_ROOM = 'Every change starts from your own base, staying in the saddle is always an option, and you stop if you are dizzy.'

/** Minutes are those of the riding, which is what riders count: from the first one on, with no briefing and no clearing up. */
function coming({ blocks, recovery: { bouts }, measures }: Pick<RideReport, 'blocks' | 'recovery' | 'measures'>): string {
  const first = blocks[0]?.from ?? 0
  const minutes = Math.max(1, Math.round(((blocks.at(-1)?.to ?? first) - first) / 60))
  const length = `${capitalised(numberWords(minutes))} ${minutes === 1 ? 'minute' : 'minutes'}`
  const { longestHard, lastHardest } = measures
  if (lastHardest === null) return `${length} with nothing hard in them.`
  const minute = numberWords(Math.max(1, Math.round((lastHardest - first) / 60)))
  if (bouts.length === 1) return `${length} with one hard effort of about ${lengthWords(longestHard)}, at minute ${minute}.`
  return `${length} with ${numberWords(bouts.length)} hard efforts, none longer than ${lengthWords(longestHard)}, the hardest at minute ${minute}.`
}

/** A length rounded up, so that "none longer than" is true: to five seconds under a minute, else to half minutes. */
function lengthWords(seconds: Seconds): string {
  const fives = Math.ceil(seconds / 5 - DRIFT) * 5
  if (fives < 60) return `${numberWords(Math.max(5, fives))} seconds`
  const halves = Math.ceil(seconds / 30 - DRIFT)
  const whole = Math.floor(halves / 2)
  const minutes = whole === 1 ? 'a minute' : `${numberWords(whole)} minutes`
  return halves % 2 === 0 ? minutes : `${minutes} and a half`
}

/** Absorbs float drift: 30.0000001 s is thirty. */
const DRIFT = 1e-6

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
