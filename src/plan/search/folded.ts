/** Letters that no accent makes of another. */
const LETTERS: Readonly<Record<string, string>> = { ß: 'ss', æ: 'ae', œ: 'oe', ø: 'o', ł: 'l', đ: 'd', ð: 'd', þ: 'th', ı: 'i' }

/** What German writes for a letter with two dots where a keyboard has none. */
const SPELLED: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue' }

/** A text as it is looked for: small letters without accents and figures, words one space apart; "Don’t — Übung" is "dont ubung". */
export const folded = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[\p{M}'’\u02bc]/gu, '')
    .toLowerCase()
    .replace(/[ßæœøłđðþı]/g, (letter) => LETTERS[letter]!)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()

/** The same with umlauts spelled out: "ubung" and "uebung" are one word, whoever typed it. */
export const spelledOut = (text: string): string =>
  folded(text.normalize('NFC').replace(/[äöü]/gi, (letter) => SPELLED[letter.toLowerCase()]!))

/**
 * What a text is found by: folded, and spelled out behind that where this differs. A text without a letter or a figure
 * ("???") stays as it is.
 */
export function foundBy(text: string): string {
  const plain = folded(text)
  const spelled = spelledOut(text)
  if (plain === '') return text.trim()
  return spelled === plain ? plain : `${plain} ${spelled}`
}
