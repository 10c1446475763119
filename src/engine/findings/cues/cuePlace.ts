import type { CueLine } from '#engine/cues/placeCues.ts'
import { COUNTS_A_SECOND } from '#engine/cues/usualPlace.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE, quoted } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import type { Counts } from '#units/units.ts'
import { say } from '#words/said.ts'
import { atLine, cueFix, leadFix, movesFreely, quotedCue } from './atLine.ts'

/** Less than a count is how somebody breathes, not where a cue stands. */
const SLIGHT: Counts = 1

/** The count-in that is offered. */
const EIGHT_IN = { counts: 8 }

/**
 * Cues that stand elsewhere than the studio's rules have them: announcements that start too late or are over too early,
 * previews that start too late, and count-ins that are too short.
 */
export function cuePlace(facts: Facts): Finding[] {
  return facts.cues.lines.flatMap((line) => {
    // Words for the very start of the ride have nothing before them to stand in, and words that open it start no earlier.
    if (line.change <= 0 || line.from <= 0) return []
    if (line.moment === 'countIn') return shortCountIn(facts, line)
    if (line.moment === 'announce') return [...startsLate(facts, line, leastAhead(facts, line)), ...endsEarly(facts, line)]
    return line.moment === 'preview' ? startsLate(facts, line, facts.rules.previewCounts) : []
  })
}

/** Counts ahead by which an announcement starts. */
const leastAhead = ({ rules, ...facts }: Facts, line: CueLine): Counts =>
  isCounted({ rules, ...facts }, line) ? rules.announceCounts : rules.announceSeconds * COUNTS_A_SECOND

function startsLate(facts: Facts, line: CueLine, least: Counts): Finding[] {
  const ahead = line.lead + speechCounts(facts, line)
  const short = least - ahead
  if (short < SLIGHT) return []
  const counts = Math.ceil(least - speechCounts(facts, line) - 1e-6)
  return [
    atLine(facts, line, {
      rule: 'cuePlace',
      severity: 'hint',
      text: say(line.moment === 'preview' ? 'checksCues.previewLate' : 'checksCues.announceLate', {
        cue: quotedCue(line),
        block: quoted(facts, line.block),
        starts: measured(facts, line, ahead),
        least: measured(facts, line, least),
      }),
      why: COMMON_PRACTICE,
      amount: short,
      fixes: () => [movesFreely(facts, line, counts) ? leadFix(facts, line, counts) : undefined],
    }),
  ]
}

function endsEarly(facts: Facts, line: CueLine): Finding[] {
  const { rules, cues } = facts
  if (!isCounted(facts, line)) return []
  const needed = cues.changes.find(({ block }) => block === line.block)?.wordsEnd ?? 0
  const most = Math.max(rules.announceCountsMost, needed)
  const over = line.lead - most
  if (over < SLIGHT) return []
  return [
    atLine(facts, line, {
      rule: 'cuePlace',
      severity: 'hint',
      text: say('checksCues.announceEarly', {
        cue: quotedCue(line),
        block: quoted(facts, line.block),
        ends: measured(facts, line, line.lead),
        most: measured(facts, line, most),
      }),
      why: COMMON_PRACTICE,
      amount: over,
      fixes: () => [movesFreely(facts, line, most) ? leadFix(facts, line, most) : undefined],
    }),
  ]
}

function shortCountIn(facts: Facts, line: CueLine): Finding[] {
  const { countInCounts } = facts.rules
  const short = countInCounts - line.count!
  if (short <= 0) return []
  const into = quoted(facts, line.block)
  return [
    atLine(facts, line, {
      rule: 'cuePlace',
      severity: 'hint',
      text: say('checksCues.shortCountIn', { block: into, counts: line.count!, least: countInCounts }),
      why: COMMON_PRACTICE,
      amount: short,
      fixes: [
        cueFix(facts, line, say('checksCues.countIn', EIGHT_IN), say('checksCues.countedIn', { ...EIGHT_IN, block: into }), { count: 8 }),
      ],
    }),
  ]
}

const isCounted = ({ sections, blocks }: Facts, line: CueLine): boolean => sections[blocks[line.block]!.section]!.bpm !== undefined

/** How many counts a line takes to say. */
function speechCounts({ sections, blocks }: Facts, { block, from, to }: CueLine): Counts {
  const { bpm } = sections[blocks[block]!.section]!
  return (to - from) * (bpm === undefined ? COUNTS_A_SECOND : bpm / 60)
}

/** Counts as they are told of a line: under a song as they are, else in seconds. */
function measured(facts: Facts, line: CueLine, counts: Counts): { amount: number; counted: boolean } {
  const counted = isCounted(facts, line)
  return { amount: counted ? counts : counts / COUNTS_A_SECOND, counted }
}
