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
  const apart = mismatches.filter((mismatch) => differsByRound(facts, line, mismatch))
  if (apart.length > 0) {
    const what = apart.every(({ claim }) => claim.about === 'left') ? 'count' : 'number'
    return cueFix(facts, line, `Take the ${what} out of the words`, `Took the ${what} out of ${sayCue(line)}`, {
      text: without(line, apart),
    })
  }
  const text = corrected(line.cue.text, mismatches)
  return cueFix(facts, line, `Say “${text}”`, `Corrected ${sayCue(line)}`, { text })
}

/** One text is spoken in every round: what is left to do is counted down by itself, and a call that builds up is another one each time. */
function differsByRound({ blocks, cues }: Facts, { block, cue }: CueLine, { claim, planned }: Mismatch): boolean {
  const { set } = blocks[block]!
  if (set === undefined || set.set.rounds < 2) return false
  if (claim.about === 'left') return true
  const rounds = cues.lines.flatMap((line, index) => (line.cue.id === cue.id ? [index] : []))
  return rounds.some(
    (round) => !cues.mismatches.some((one) => one.line === round && one.claim.from === claim.from && one.planned === planned),
  )
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
