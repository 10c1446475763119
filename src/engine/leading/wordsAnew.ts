import type { Mismatch } from '#engine/cues/claims/checkClaims.ts'
import type { About } from '#engine/cues/claims/claim.ts'
import { repaired } from '#engine/cues/claims/repair.ts'
import { replaced } from '#engine/cues/claims/replaced.ts'
import type { CueReport } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Ride } from '#plan/model.ts'
import type { Plan } from './led.ts'

/** By block of the class as it comes: texts of its cues as planned, and as they have to be said now. */
export type WordsAnew = ReadonlyMap<number, ReadonlyMap<string, string>>

/** What riders act on at once: the knob, how long, how many are to come. */
const FOLLOWS: ReadonlySet<About> = new Set(['change', 'stay', 'total', 'length', 'left', 'gone', 'until', 'ahead', 'rounds'])
/** What is a call by itself, so that the plan's words can stand in its place. */
const CALLS: ReadonlySet<About> = new Set(['change', 'stay', 'total'])

/**
 * Words of cues that the class as it comes no longer bears out, put right: where a song is left
 * out, "one and a half on" is "one turn on" after it, as the ledger has it. Words that differed
 * from the plan already are the leader's own and stay.
 *
 * @param cues of the class as it comes
 * @param blocks by block of that class: the block of the plan it is
 */
export function wordsAnew(plan: Plan, cues: CueReport, blocks: readonly { planned: number }[]): WordsAnew {
  const own = new Set(mismatchesIn(plan.report.cues).map(({ block, text, claim }) => keyOf(block, text, claim)))
  const wrong = new Map<number, Map<string, Mismatch[]>>()
  for (const { block, text, ...mismatch } of mismatchesIn(cues)) {
    if (!FOLLOWS.has(aboutOf(mismatch)) || own.has(keyOf(blocks[block]!.planned, text, mismatch.claim))) continue
    const ofBlock = wrong.get(block) ?? new Map<string, Mismatch[]>()
    wrong.set(block, ofBlock.set(text, [...(ofBlock.get(text) ?? []), mismatch]))
  }
  const words = new Map<number, Map<string, string>>()
  for (const [block, texts] of wrong) {
    words.set(block, new Map([...texts].map(([text, mismatches]) => [text, putRight(text, mismatches, plan.ride)])))
  }
  return words
}

/** The numbers changed where the sentence allows it, else the call in the plan's words; what can be said neither way stays as it is. */
const putRight = (text: string, mismatches: readonly Mismatch[], ride: Ride): string =>
  repaired(text, mismatches, ride.bike, speechOf(ride)) ??
  replaced(
    text,
    mismatches.filter((mismatch) => CALLS.has(aboutOf(mismatch))),
    speechOf(ride).grammar,
  )

const aboutOf = ({ claim }: Mismatch): About => claim.meanings[0].about

/** Each number that does not hold, with the block and the text it stands in. */
const mismatchesIn = ({ lines, mismatches }: CueReport) =>
  mismatches.map((mismatch) => ({ ...mismatch, block: lines[mismatch.line]!.block, text: lines[mismatch.line]!.cue.text }))

const keyOf = (planned: number, text: string, { from }: Mismatch['claim']): string => `${planned} ${from} ${text}`
