import type { CueLine } from '#engine/cues/placeCues.ts'
import { overlap } from '#engine/cues/talk.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE, quotedSection } from '#engine/findings/finding.ts'
import type { Finding, Fix } from '#engine/report.ts'
import type { Stretch } from '#units/units.ts'
import { say } from '#words/said.ts'
import { atLine, leadFix, movesFreely, quotedCue } from './atLine.ts'

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
        text: say('checksCues.quietKept', {
          cue: quotedCue(line),
          seconds: overlap(quiet, line),
          song: quotedSection(facts, quiet.section),
        }),
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
