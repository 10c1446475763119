import { constantsOf } from '#engine/constants.ts'
import { speechSeconds, wordsPerSecond } from '#engine/cues/speechRate.ts'
import { utteranceOf } from '#engine/cues/utterance.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Seconds } from '#units/units.ts'
import type { LedClass } from './ledClass.ts'

/** The last words, and when they are said so that they are over when the riding is. */
interface ClosingWords {
  text: string
  from: Seconds
  to: Seconds
}

/**
 * Said so that they end with the last block, before the clear-up and inside the slot: the ending
 * off the pedals is planned like any block.
 */
export function closingWords({ ride, report }: LedClass): ClosingWords {
  const speech = speechOf(ride)
  const text = speech.sentences.closing
  const rules = constantsOf(ride)
  const rate = wordsPerSecond(ride.leaders[0]!.wordsPerMinute, 0, rules)
  const to = report.sections.at(-1)?.to ?? report.overall.total
  return { text, from: Math.max(0, to - speechSeconds(utteranceOf(text, speech), rate, rules)), to }
}
