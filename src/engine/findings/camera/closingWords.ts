import { atLine, quotedCue } from '#engine/findings/cues/atLine.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { ARITHMETIC, quoted } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'

/** Words that are still being said when the slot is over: a stream is cut off where a room would wait. */
export function closingWords(facts: Facts): Finding[] {
  const { slot } = facts.overall
  return facts.cues.lines.flatMap((line) => {
    const over = line.to - slot
    if (over <= 1e-6) return []
    return [
      atLine(facts, line, {
        rule: 'closingWords',
        severity: 'warning',
        text: say('checksCues.closingWords', { cue: quotedCue(line), block: quoted(facts, line.block), seconds: Math.max(1, over) }),
        why: ARITHMETIC,
        amount: over,
      }),
    ]
  })
}
