import { atLine, quotedCue } from '#engine/findings/cues/atLine.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE, eachBlock, quoted } from '#engine/findings/finding.ts'
import { blockFix } from '#engine/findings/fixes/blockFix.ts'
import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'

/** Walking the room where there is none, and words that ask riders to look: a picture comes late, small and mirrored. */
export function nobodyToLead(facts: Facts): Finding[] {
  return [...walks(facts), ...mirrors(facts)]
}

function walks(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block }) =>
    block.walk
      ? {
          rule: 'walkOnline',
          severity: 'warning',
          text: say('checksCues.walkOnline', { block: quotedItem(block) }),
          why: COMMON_PRACTICE,
          fixes: [blockFix(block, say('checks.stayOnBike'), say('checks.stayedOnBike', { block: quotedItem(block) }), { walk: undefined })],
        }
      : undefined,
  )
}

/** What riders would have to see. “Thanks for riding with me” and “my legs are burning” ask for no look. */
const LOOK =
  /\b(?:mirror|(?:follow|copy|watch|match) me|look at me|same as me|(?:do (?:it|this|that)|move|lean|press|reach|stretch|switch|turn|hands|elbows|arms|feet) (?:with|like) me|(?:watch|see|copy|match|look at) my \w+)\b/i

function mirrors(facts: Facts): Finding[] {
  return facts.cues.lines.flatMap((line) => {
    const words = LOOK.exec(line.cue.text)?.[0]
    if (words === undefined) return []
    return [
      atLine(facts, line, {
        rule: 'mirrorOnline',
        severity: 'hint',
        text: say('checksCues.mirrorOnline', { cue: quotedCue(line), block: quoted(facts, line.block), words }),
        why: COMMON_PRACTICE,
      }),
    ]
  })
}
