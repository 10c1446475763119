import type { CueLine } from '#engine/cues/placeCues.ts'
import type { Claim, Figures, Meaning, MeaningOf } from './claim.ts'
import { claimsOf } from './claimsOf.ts'
import { edited } from './edited.ts'
import { judge } from './plan/judge.ts'
import type { PlanView } from './plan/planView.ts'
import { type Spoken, spokenAt } from './plan/spoken.ts'
import type { Verdict } from './plan/verdict.ts'

/** A number a cue speaks that the plan does not bear out. */
export interface Mismatch {
  claim: Claim
  /** The words as they stand, and what the plan makes of them. */
  said: string
  planned: string
  /** The numbers the plan has, in the unit of the claim's first meaning. */
  right: Figures
}

/**
 * Every number a line speaks that differs from the plan at the moment it is said; what cannot be judged is left alone.
 * Cost: linear in the text, and in the blocks of the section for each number in it.
 */
export function checkClaims(line: CueLine, view: PlanView): Mismatch[] {
  const { cue } = line
  const claims = claimsOf(cue, view.ride.bike.unit, view.speech)
  if (claims.length === 0) return []
  const changes = claims.filter(isChange)
  const single = changes.length > 1 ? claims.filter((claim) => !isChange(claim)) : claims
  const found = single.flatMap((claim) => {
    const wrong = judgeClaim(claim, spokenAt(view, line, shareOf(cue.text, claim)))
    return wrong === null || wrong === 'holds' ? [] : [mismatch(cue.text, claim, wrong, view)]
  })
  const sequence = changes.length > 1 ? judgeSequence(line, changes, view) : null
  return sequence ? [...found, sequence].sort((a, b) => a.claim.from - b.claim.from) : found
}

/** How far into a text a claim stands, 0–1: that far into the line it is spoken. */
const shareOf = (text: string, { from, to }: Claim): number => (from + to) / 2 / Math.max(1, text.length)

/** A meaning that the plan does not bear out, with what it should be. */
interface Wrong {
  meaning: Meaning
  verdict: Verdict & { holds: false }
}

/** Wrong where its first meaning is, and no other holds; null where it holds or cannot be judged. */
function judgeClaim({ meanings }: Claim, spoken: Spoken): Wrong | 'holds' | null {
  const [first, ...others] = meanings
  const verdict = judge(first, spoken)
  if (verdict === null) return null
  if (verdict.holds) return 'holds'
  let told: Wrong = { meaning: first, verdict }
  for (const meaning of others) {
    // In the middle of a block "last thirty seconds" is of what is ridden, however long the block is.
    if (spoken.inside && first.about === 'left' && meaning.about === 'length') continue
    const other = judge(meaning, spoken)
    if (other?.holds) return 'holds'
    // In the middle of a block what is left of it is what "thirty seconds" would have to say.
    if (other && spoken.inside && first.about === 'length' && meaning.about === 'left' && meaning.unit === first.unit) {
      told = { meaning, verdict: other }
    }
  }
  return told
}

const isChange = ({ meanings: [{ about }] }: Claim): boolean => about === 'change'

/**
 * Several changes in one call. Where the words put one on top of the other their sum is what is planned; elsewhere one of
 * them, or the sum, may be this block's and the others of later.
 */
function judgeSequence(line: CueLine, changes: readonly Claim[], view: PlanView): Mismatch | null {
  const spoken = spokenAt(view, line, 0)
  const meanings = changes.map(({ meanings: [first] }) => first as MeaningOf<'change'>)
  const sum: MeaningOf<'change'> = {
    about: 'change',
    low: meanings.reduce((all, { low }) => all + low, 0),
    high: meanings.reduce((all, { high }) => all + high, 0),
  }
  const verdict = judge(sum, spoken)
  if (verdict === null || verdict.holds) return null
  const joined = meanings.slice(1).every(({ adds }) => adds)
  if (!joined && changes.some((claim) => typeof judgeClaim(claim, spoken) !== 'object' || judgeClaim(claim, spoken) === null)) return null
  const whole: Claim = { from: changes[0]!.from, to: changes.at(-1)!.to, meanings: [sum], slots: [] }
  return mismatch(line.cue.text, whole, { meaning: sum, verdict }, view)
}

/** What is said and what the plan has, in the same words where only a number differs. */
function mismatch(
  text: string,
  claim: Claim,
  { meaning, verdict: { right, call } }: Wrong,
  { ride: { bike }, speech: { grammar } }: PlanView,
): Mismatch {
  const edits = call ? null : grammar.rewrite(text, claim, right, bike)
  if (edits === null) return { claim, said: text.slice(claim.from, claim.to), planned: grammar.planned(meaning, right, call, bike), right }
  // "A four out of ten" takes its article along.
  const from = Math.min(claim.from, ...edits.map((edit) => edit.from))
  const to = Math.max(claim.to, ...edits.map((edit) => edit.to))
  const planned = edited(
    text.slice(from, to),
    edits.map((edit) => ({ ...edit, from: edit.from - from, to: edit.to - from })),
  )
  return { claim, said: text.slice(from, to), planned, right }
}
