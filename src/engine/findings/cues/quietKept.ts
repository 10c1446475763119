import type { CueLine } from '#engine/cues/placeCues.ts'
import { overlap } from '#engine/cues/talk.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE, quotedSection } from '#engine/findings/finding.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Stretch } from '#units/units.ts'
import { atLine, leadFix, movesFreely, sayCue } from './atLine.ts'

/** Words over music that was marked to be left alone; count-ins may. */
export function quietKept(facts: Facts): Finding[] {
  return facts.cues.lines.flatMap((line) => {
    if (line.moment === 'countIn' || line.change <= 0) return []
    const quiet = facts.cues.quiet.find((stretch) => overlap(stretch, line) > 1e-6)
    if (quiet === undefined) return []
    return [
      atLine(facts, line, {
        rule: 'quietKept',
        severity: 'warning',
        text: `${sayCue(line)} talks for ${formatNumber(overlap(quiet, line), 1)} s over a quiet stretch of ${quotedSection(facts, quiet.section)}.`,
        why: COMMON_PRACTICE,
        amount: overlap(quiet, line),
        fixes: () => [beforeQuiet(facts, line, quiet)],
      }),
    ]
  })
}

/** Ends the words a count before the quiet stretch, where they then stand clear of everything else. */
function beforeQuiet(facts: Facts, line: CueLine, quiet: Stretch): Fix | undefined {
  if (line.lead <= 0 || line.moment === 'action') return undefined
  const beat = (line.change - line.to) / line.lead
  const counts = Math.ceil((line.change - quiet.from) / beat) + 1
  return movesFreely(facts, line, counts) ? leadFix(facts, line, counts) : undefined
}
