import { opensBlock, roomFrom } from '#engine/cues/cueRoom.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import { atLine, leadFix, quotedCue, SPEECH_ROUNDING } from './atLine.ts'

/**
 * Words that do not fit where they stand: an announcement tells the next thing only, so it
 * starts after the change before; a form point or a story stays inside its block.
 */
export function cueRoom(facts: Facts): Finding[] {
  return facts.cues.lines.flatMap((line) => {
    const from = roomFrom(facts.blocks, line)
    if (from === null) return []
    // Words that begin with their block run past its end, others begin before their room does.
    const room = opensBlock(line, facts.blocks) ? facts.blocks[line.block]!.to - line.from : line.to - from
    const over = line.to - line.from - room
    if (over <= SPEECH_ROUNDING) return []
    const needed = facts.cues.changes.find(({ block }) => block === line.block)?.wordsEnd ?? 0
    return [
      atLine(facts, line, {
        rule: 'cueRoom',
        severity: 'warning',
        text: say('checksCues.cueRoom', { cue: quotedCue(line), takes: line.to - line.from, has: Math.max(0, room) }),
        why: COMMON_PRACTICE,
        amount: over,
        fixes: () => [line.moment === 'announce' && line.lead > needed + 1e-6 ? leadFix(facts, line, needed) : undefined],
      }),
    ]
  })
}
