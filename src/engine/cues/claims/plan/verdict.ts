import type { Figures } from '#engine/cues/claims/claim.ts'

/** What the plan says to one meaning of a claim: that it holds, what it should be, or nothing where it cannot be judged. */
export type Verdict = { holds: true } | { holds: false; right: Figures; call?: OtherCall } | null

/** What the plan has that no other number in the same words says. */
export type OtherCall = 'stay' | 'allOff' | 'orMore' | 'orLess'

export const HOLDS: Verdict = { holds: true }

/** The first figure is offered; the claim holds where any fits. */
export function anyFits<Candidate>(
  candidates: readonly Candidate[],
  fits: (candidate: Candidate) => boolean,
  right: (first: Candidate) => Figures,
): Verdict {
  if (candidates.length === 0) return null
  return candidates.some(fits) ? HOLDS : { holds: false, right: right(candidates[0]!) }
}
