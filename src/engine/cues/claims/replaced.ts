import type { Claim } from './claim.ts'
import { edited } from './english/rewrite.ts'

/** A claim and other words for the whole of it. */
interface Replacement {
  claim: Pick<Claim, 'from' | 'to'>
  planned: string
}

/** A text with whole claims said in other words, as a call is in another bike's: "Add a half" → "To about fifteen". */
export const replaced = (text: string, replacements: readonly Replacement[]): string =>
  edited(
    text,
    replacements.map(({ claim: { from, to }, planned }) => ({ from, to, text: fitting(text, from, to, planned) })),
  )

/** The words with the capital of what stood there, without an article or a "to" that stands before them already. */
function fitting(text: string, from: number, to: number, words: string): string {
  const old = text.slice(from, to)
  const before = text.slice(0, from)
  const led = /\bto\s+$/i.test(before) ? words.replace(/^to /i, '') : words
  const plain = /^an? /i.test(led) && !/^an? /i.test(old) ? led.replace(/^an? /i, '') : led
  const opens = /(?:^|[.!?]\s*)$/.test(before)
  const capital = /^\p{Lu}/u.test(old) || (opens && /^[\d½⅓⅔¼¾+−-]/.test(old))
  return capital ? plain[0]!.toUpperCase() + plain.slice(1) : plain
}
