import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE, quoted } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import { atLine, quotedCue } from './atLine.ts'

/** Strain from which a leader gets few words out, and how many (common practice). */
const BREATHLESS = 8
const MOST_WORDS = 8

/** Long cues for a leader who is riding hard. */
export function breathlessWords(facts: Facts): Finding[] {
  return facts.cues.lines.flatMap((line) => {
    if (line.strain < BREATHLESS || line.words <= MOST_WORDS || line.count !== undefined) return []
    return [
      atLine(facts, line, {
        rule: 'breathlessWords',
        severity: 'hint',
        text: say('checksCues.breathlessWords', {
          cue: quotedCue(line),
          words: line.words,
          block: quoted(facts, line.block),
          buildUp: line.strain,
          most: MOST_WORDS,
        }),
        why: COMMON_PRACTICE,
        amount: line.words - MOST_WORDS,
      }),
    ]
  })
}
