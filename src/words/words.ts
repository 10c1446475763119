import type { Language } from './language.ts'
import { setLocale } from './locale.ts'
import { type Catalogue, type Refusal, type Text, tellIn } from './said.ts'

/**
 * Every text of the page in the language chosen. It is there before the page is drawn and not
 * before its modules run: read it in a function, never in a constant of a module.
 */
export let words: Catalogue

/** The language of {@link words}. */
export let language: Language

/** Whatever is told from now on is told in this language, with the numbers and days of the locale. */
export function setWords(chosen: Language, catalogue: Catalogue, locale: string): void {
  language = chosen
  words = catalogue
  setLocale(locale)
}

/** A text in the language chosen. */
export const tell = (text: Text): string => tellIn(words, text)

/** Why a typed text was not taken, in the language chosen. */
export function tellRefusal(why: Refusal): string {
  if (typeof why === 'string' || !('kind' in why)) return tell(why)
  return words.fields[why.kind](why as never)
}
