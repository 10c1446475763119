import { corrected, type Mismatch } from '#engine/cues/checkClaims.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { ARITHMETIC } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { joinWords } from '#plan/names.ts'
import { atLine, cueFix, sayCue } from './atLine.ts'

/** Cues that speak another number than the plan has; the right one is offered. */
export function cueNumbers(facts: Facts): Finding[] {
  return linesOf(facts.cues.mismatches).map(([index, mismatches]) => {
    const line = facts.cues.lines[index]!
    const parts = mismatches.map(({ said, planned }) => `“${said}” where the plan is “${planned}”`)
    return atLine(facts, line, {
      rule: 'cueNumbers',
      severity: 'warning',
      text: `${sayCue(line)} says ${joinWords(parts)}.`,
      why: ARITHMETIC,
      amount: mismatches.length,
      fixes: [correction(facts, line, mismatches)],
    })
  })
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

function correction(facts: Facts, line: CueLine, mismatches: readonly Mismatch[]) {
  const { set } = facts.blocks[line.block]!
  // One text is spoken in every round: what is left to do differs from round to round and is counted down by itself.
  const counted = set !== undefined && set.set.rounds > 1 && mismatches.some(({ claim }) => claim.about === 'left')
  if (counted)
    return cueFix(facts, line, 'Take the count out of the words', `Took the count out of ${sayCue(line)}`, {
      text: without(line, mismatches),
    })
  const text = corrected(line.cue.text, mismatches)
  return cueFix(facts, line, `Say “${text}”`, `Corrected ${sayCue(line)}`, { text })
}

/** The text without the claims, its sentences closed up. */
function without({ cue }: CueLine, mismatches: readonly Mismatch[]): string {
  const fromLast = [...mismatches].sort((a, b) => b.claim.from - a.claim.from)
  const bare = fromLast.reduce((text, { claim }) => text.slice(0, claim.from) + text.slice(claim.to), cue.text)
  const joined = bare
    .replace(/\s*([.!?,;:])(?:\s*[.!?,;:])+/g, '$1')
    .replace(/^\s*[.!?,;:]\s*/, '')
    .replace(/\s+([.!?,;:])/g, '$1')
    .replace(/\s{2,}/g, ' ')
    .trim()
  return joined === '' ? '' : joined[0]!.toUpperCase() + joined.slice(1)
}
