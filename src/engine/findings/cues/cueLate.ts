import type { ChangeKind } from '#engine/cues/changeAt.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { quoted } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { plural } from '#units/plural.ts'
import type { Counts } from '#units/units.ts'
import { atLine, leadFix, sayCue } from './atLine.ts'

const WHY = 'group-exercise teaching; common practice'

/** Announcements that end too close to their change to be acted on. */
export function cueLate(facts: Facts): Finding[] {
  const changes = new Map(facts.cues.changes.map((change) => [change.block, change]))
  return facts.cues.lines.flatMap((line) => {
    const change = changes.get(line.block)
    // Words for the very start of the ride have nothing before them to stand in, and words that open it start no earlier.
    if (line.moment !== 'announce' || change === undefined || line.change <= 0 || line.from <= 0) return []
    const short = change.wordsEnd - line.lead
    if (short <= 1e-6) return []
    return [
      atLine(facts, line, {
        rule: 'cueLate',
        severity: 'warning',
        text: `${sayCue(line)} ends ${sayCounts(line.lead)} before ${quoted(facts, line.block)}; ${forWhat(change.kinds)} needs ${change.wordsEnd}.`,
        why: WHY,
        amount: short,
        fixes: () => [leadFix(facts, line, change.wordsEnd)],
      }),
    ]
  })
}

const sayCounts = (counts: Counts): string => {
  const whole = Math.max(0, Math.round(counts))
  return plural(whole, 'count')
}

function forWhat(kinds: readonly ChangeKind[]): string {
  const posture = kinds.includes('posture')
  if (posture && kinds.includes('resistance')) return 'resistance and then posture'
  if (posture) return 'a change of posture'
  return kinds.includes('resistance') ? 'a turn of the knob' : 'a change'
}
