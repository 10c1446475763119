import type { Grammar } from '#engine/speech/speech.ts'
import type { Claim } from './claim.ts'
import { edited } from './edited.ts'

/** A claim and other words for the whole of it. */
interface Replacement {
  claim: Pick<Claim, 'from' | 'to'>
  planned: string
}

/** A text with whole claims said in other words, as a call is in another bike's: "Add a half" → "To about fifteen". */
export const replaced = (text: string, replacements: readonly Replacement[], grammar: Grammar): string =>
  edited(
    text,
    replacements.map(({ claim: { from, to }, planned }) => ({ from, to, text: fitted(text, from, to, planned, grammar) })),
  )

/** The words with the capital of what stood there, without what stands before them already. */
function fitted(text: string, from: number, to: number, words: string, grammar: Grammar): string {
  const old = text.slice(from, to)
  const before = text.slice(0, from)
  const plain = grammar.fitting(old, before, words)
  const opens = /(?:^|[.!?]\s*)$/.test(before)
  const capital = /^\p{Lu}/u.test(old) || (opens && /^[\d½⅓⅔¼¾+−-]/.test(old))
  return capital ? plain[0]!.toUpperCase() + plain.slice(1) : plain
}
