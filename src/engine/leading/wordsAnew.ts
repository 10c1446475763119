import { corrected, type Mismatch } from '#engine/cues/checkClaims.ts'
import type { CueReport } from '#engine/report.ts'
import type { Plan } from './led.ts'

/** By block of the class as it comes: texts of its cues as planned, and as they have to be said now. */
export type WordsAnew = ReadonlyMap<number, ReadonlyMap<string, string>>

/** What riders act on at once: the knob, how long, how many are to come. */
const FOLLOWS: ReadonlySet<Mismatch['claim']['about']> = new Set(['change', 'stay', 'total', 'seconds', 'ahead'])

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
  const wrong = mismatchesIn(cues).filter(
    ({ block, text, claim }) => FOLLOWS.has(claim.about) && !own.has(keyOf(blocks[block]!.planned, text, claim)),
  )
  const words = new Map<number, Map<string, string>>()
  for (const { block, text } of wrong) {
    const ofText = wrong.filter((other) => other.block === block && other.text === text)
    words.set(block, (words.get(block) ?? new Map()).set(text, corrected(text, ofText)))
  }
  return words
}

/** Each number that does not hold, with the block and the text it stands in. */
const mismatchesIn = ({ lines, mismatches }: CueReport) =>
  mismatches.map((mismatch) => ({ ...mismatch, block: lines[mismatch.line]!.block, text: lines[mismatch.line]!.cue.text }))

const keyOf = (planned: number, text: string, { from }: Mismatch['claim']): string => `${planned} ${from} ${text}`
