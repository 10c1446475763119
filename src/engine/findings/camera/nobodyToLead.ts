import { atLine, sayCue } from '#engine/findings/cues/atLine.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes, quoted } from '#engine/findings/finding.ts'
import { blockFix } from '#engine/findings/fixes/blockFix.ts'
import type { Finding } from '#engine/report.ts'

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
          text: `In ${inQuotes(block)} you leave the bike, and to a camera there is no room to walk.`,
          why: COMMON_PRACTICE,
          fixes: [blockFix(block, 'Stay on the bike', `Stayed on the bike in ${inQuotes(block)}`, { walk: undefined })],
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
        text: `${sayCue(line)} in ${quoted(facts, line.block)} says “${words}”; riders at home listen more than they see, so say what to do.`,
        why: COMMON_PRACTICE,
      }),
    ]
  })
}
