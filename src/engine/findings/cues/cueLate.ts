import type { ChangeKind } from '#engine/cues/changeAt.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { quoted } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import { atLine, leadFix, quotedCue } from './atLine.ts'

const WHY = say('sources.groupTeaching')

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
        text: say('checksCues.cueLate', {
          cue: quotedCue(line),
          counts: Math.max(0, Math.round(line.lead)),
          block: quoted(facts, line.block),
          needs: forWhat(change.kinds),
          needed: change.wordsEnd,
        }),
        why: WHY,
        amount: short,
        fixes: () => [leadFix(facts, line, change.wordsEnd)],
      }),
    ]
  })
}

function forWhat(kinds: readonly ChangeKind[]) {
  const posture = kinds.includes('posture')
  if (posture && kinds.includes('resistance')) return 'resistanceAndPosture'
  if (posture) return 'posture'
  return kinds.includes('resistance') ? 'resistance' : 'other'
}
