import { constantsOf } from '#engine/constants.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import { speakingSeconds } from '#engine/cues/speechRate.ts'
import { utteranceOfCue } from '#engine/cues/utterance.ts'
import type { Plan } from '#engine/leading/led.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Seconds } from '#units/units.ts'

/** Words to be said by a voice. */
export interface Spoken {
  /** When to begin, on the ride clock. */
  at: Seconds
  text: string
  /** How long it is, in words of ordinary speech: a voice is timed by it. */
  words: number
  /** 1 is the voice's usual pace. */
  rate: number
}

/** Paces a voice can be asked for. */
const RATES = { from: 0.5, to: 2 } as const

/** Words a minute of a voice nobody has heard yet (common practice; heard voices are measured). */
export const USUAL_PACE = 180

/**
 * The cues of a ride as a voice says them: at the words a minute of whoever speaks, begun so that
 * they end when the cue's words should. A count-in without words of its own is counted down on its beats.
 *
 * @param pace words a minute of the voice at its usual rate
 * @param speed seconds of the ride in one second: words take no less time when the ride goes faster
 */
export function spokenCues({ ride, report }: Plan, pace: number, speed: number): Spoken[] {
  const rules = constantsOf(ride)
  const speech = speechOf(ride)
  const spoken = report.cues.lines.flatMap((line) => {
    const text = line.cue.text.trim()
    if (text === '') return line.count === undefined ? [] : countedIn(line, line.count)
    const leader = ride.leaders.find(({ id }) => id === line.speaker) ?? ride.leaders[0]!
    const rate = Math.min(RATES.to, Math.max(RATES.from, leader.wordsPerMinute / pace))
    const words = Math.max(1, speakingSeconds(utteranceOfCue(line.cue, speech), 1, rules))
    const seconds = (60 * words) / (pace * rate)
    return [{ at: Math.max(0, line.to - seconds * speed), text, words, rate }]
  })
  return spoken.sort((a, b) => a.at - b.at)
}

/** "4", "3", "2", "1", a number a beat. */
function countedIn({ from, to }: CueLine, count: number): Spoken[] {
  return Array.from({ length: count }, (_, i) => ({
    at: from + (i * (to - from)) / count,
    text: `${count - i}`,
    words: 1,
    rate: RATES.to * 0.75,
  }))
}
