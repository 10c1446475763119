import type { CueLine } from '#engine/cues/placeCues.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { ARITHMETIC } from '#engine/findings/finding.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { isInside } from '#plan/cueStart.ts'
import { say } from '#words/said.ts'
import { atLine, leadFix, quotedCue, SPEECH_ROUNDING } from './atLine.ts'

/** Two cues spoken at once; each is told against the one it runs into. */
export function cueCollisions(facts: Facts): Finding[] {
  const { lines } = facts.cues
  return lines.flatMap((line, i) => {
    const before = latestBefore(lines, i)
    const overlap = before === undefined ? 0 : Math.min(before.to, line.to) - line.from
    // Words for the very start have no time before it to be told apart in.
    if (before === undefined || overlap < SPEECH_ROUNDING || line.change <= 0) return []
    return [
      atLine(facts, line, {
        rule: 'cueCollisions',
        severity: 'warning',
        text: say('checksCues.cueCollisions', { cue: quotedCue(line), seconds: overlap, before: quotedCue(before) }),
        why: ARITHMETIC,
        amount: overlap,
        fixes: () => [earlier(facts, before, line)],
      }),
    ]
  })
}

/** Of the lines that start no later, the one that ends last. */
function latestBefore(lines: readonly CueLine[], index: number): CueLine | undefined {
  let latest: CueLine | undefined
  for (let i = index - 1; i >= 0 && lines[index]!.from - lines[i]!.from < LONGEST; i--) {
    if (latest === undefined || lines[i]!.to > latest.to) latest = lines[i]
  }
  return latest
}

/** No cue is spoken for longer, in seconds; further back there is nothing to run into. */
const LONGEST = 300

/** Brings the first cue's end to one count before the second, where nothing else is spoken. */
function earlier(facts: Facts, first: CueLine, second: CueLine): Fix | undefined {
  if (first.moment === 'countIn' || first.moment === 'action' || first.lead <= 0) return undefined
  const beat = (first.change - first.to) / first.lead
  const counts = Math.ceil((first.change - second.from) / beat) + 1
  const end = first.change - counts * beat
  const start = end - (first.to - first.from)
  const free = facts.cues.lines.every((line) => line === first || line === second || line.to <= start || line.from >= end)
  const room = isInside(first) ? facts.blocks[first.block]!.from : facts.blocks[first.block - 1]?.from
  const inPlay = start >= 0 && room !== undefined && start >= room
  return free && inPlay ? leadFix(facts, first, counts) : undefined
}
