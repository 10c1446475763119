import type { Mismatch } from '#engine/cues/claims/checkClaims.ts'
import { type PlanView, viewPlan } from '#engine/cues/claims/plan/planView.ts'
import { holds, repairOf } from '#engine/cues/claims/repair.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { ARITHMETIC } from '#engine/findings/finding.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { say } from '#words/said.ts'
import { atLine, cueFix, quotedCue } from './atLine.ts'

/** Cues that speak another number than the plan has; the sentence with the right one is offered where there is one. */
export function cueNumbers(facts: Facts): Finding[] {
  const { mismatches, lines } = facts.cues
  if (mismatches.length === 0) return []
  const { ride, blocks, sections, ledger, rules } = facts
  const view = viewPlan(ride, blocks, sections, ledger, rules)
  const spoken = byCue(lines)
  return linesOf(mismatches).map(([index, wrong]) => {
    const line = lines[index]!
    return atLine(facts, line, {
      rule: 'cueNumbers',
      severity: 'warning',
      text: say('checksCues.cueNumbers', { cue: quotedCue(line), wrong: wrong.map(({ said, planned }) => ({ said, planned })) }),
      why: ARITHMETIC,
      amount: wrong.length,
      fixes: () => [correction(facts, line, wrong, spoken.get(line.cue.id)!, view)],
    })
  })
}

/** Every time each cue is spoken: once in every round of a set. */
function byCue(lines: readonly CueLine[]): ReadonlyMap<string, CueLine[]> {
  const spoken = new Map<string, CueLine[]>()
  for (const line of lines) {
    const before = spoken.get(line.cue.id)
    if (before) before.push(line)
    else spoken.set(line.cue.id, [line])
  }
  return spoken
}

/** Mismatches come in the order of their lines. */
function linesOf(mismatches: readonly (Mismatch & { line: number })[]): [line: number, mismatches: Mismatch[]][] {
  const grouped: [number, Mismatch[]][] = []
  for (const mismatch of mismatches) {
    const last = grouped.at(-1)
    if (last?.[0] === mismatch.line) last[1].push(mismatch)
    else grouped.push([mismatch.line, [mismatch]])
  }
  return grouped
}

/** @param spoken every time the cue is spoken */
function correction(facts: Facts, line: CueLine, wrong: readonly Mismatch[], spoken: readonly CueLine[], view: PlanView): Fix | undefined {
  const text = repairOf(wrong, spoken, view)
  const cue = quotedCue(line)
  if (text !== null) return cueFix(facts, line, say('checksCues.say', { words: text }), say('checksCues.corrected', { cue }), { text })
  // One text is spoken in every round: what is left to do is counted down by itself, and a call that builds up is another one each time.
  const bare = spoken.length > 1 ? without(line, wrong) : null
  if (bare === null || !holds(bare, spoken, view)) return undefined
  const counts = wrong.every(({ claim }) => COUNTING.has(claim.meanings[0].about))
  return counts
    ? cueFix(facts, line, say('checksCues.takeCountOut'), say('checksCues.tookCountOut', { cue }), { text: bare })
    : cueFix(facts, line, say('checksCues.takeNumberOut'), say('checksCues.tookNumberOut', { cue }), { text: bare })
}

const COUNTING: ReadonlySet<string> = new Set(['more', 'last', 'done', 'place'])

/** The text without the claims, its sentences closed up; null where one is no clause by itself and would leave a gap. */
function without({ cue: { text } }: CueLine, mismatches: readonly Mismatch[]): string | null {
  const whole = mismatches.every(
    ({ claim: { from, to } }) => /(?:^|[.!?,;:–—]\s*)$/.test(text.slice(0, from)) && /^\s*(?:[.!?,;:–—]|$)/.test(text.slice(to)),
  )
  if (!whole) return null
  const fromLast = [...mismatches].sort((a, b) => b.claim.from - a.claim.from)
  const bare = fromLast.reduce((words, { claim }) => words.slice(0, claim.from) + words.slice(claim.to), text)
  const joined = bare
    .replace(/\s*([.!?,;:])(?:\s*[.!?,;:])+/g, '$1')
    .replace(/^\s*[.!?,;:]\s*/, '')
    .replace(/\s+([.!?,;:])/g, '$1')
    .replace(/\s{2,}/g, ' ')
    .trim()
  return joined === '' ? '' : joined[0]!.toUpperCase() + joined.slice(1)
}
