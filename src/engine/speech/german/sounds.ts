import { numberWords } from './numberWords.ts'

/** Two letters or three that are one vowel: "ei", "ie", "au", "äu", "eu", and long ones. */
const VOWELS = /ei|ey|ai|ay|ie|au|äu|eu|aa|ee|oo|[aeiouyäöüàáâèéêíîóôúû]/gu

/**
 * Syllables of a German word as it is spoken: one for each vowel or pair that is one; "qu" has none.
 * A word without a vowel is spelled ("km" two). Foreign words of the trade are said as at home.
 *
 * @param word in lower case
 */
export function syllablesOf(word: string): number {
  const listed = FOREIGN.get(word)
  if (listed !== undefined) return listed
  const said = word.replace(/qu/g, 'kw').replace(/[’']/g, '')
  const vowels = said.match(VOWELS)?.length ?? 0
  if (vowels > 0) return vowels
  return /^(?:h?m+|p?s+t*|[ntd])$/.test(said) ? 1 : [...said].length
}

/** English words of the trade, where the e at their end is not heard. */
const FOREIGN: ReadonlyMap<string, number> = new Map(
  ['ride rides base drive pace time bike bikes move moves groove', 'release', 'recovery'].flatMap((words, i) =>
    words.split(' ').map((word) => [word, i === 2 ? 4 : i + 1] as const),
  ),
)

/** Consonants as they are heard: "sch", "ch", "ck", "ng", "pf", "tz" are one, and so is a double one; an h after a vowel is none. */
export const consonantsIn = (word: string): number =>
  word
    .replace(/(?<=[aeiouyäöü])h/gu, '')
    .replace(/[^\p{L}]|[aeiouyäöü]/gu, '')
    .replace(/sch|(.)\1|ch|ck|ng|pf|ph|th|tz|dt/g, 'x').length

const SIGNS: Readonly<Record<string, string>> = {
  '½': 'einhalb',
  '⅓': 'eindrittel',
  '⅔': 'zweidrittel',
  '¼': 'einviertel',
  '¾': 'dreiviertel',
  '⅛': 'einachtel',
  '⅜': 'dreiachtel',
  '⅝': 'fünfachtel',
  '⅞': 'siebenachtel',
}
const FRACTIONS: Readonly<Record<string, string>> = { '1/2': '½', '1/3': '⅓', '2/3': '⅔', '1/4': '¼', '3/4': '¾', '1/8': '⅛' }
const FIGURE = /^(\d*)(?:([.,:/])(\d+))?([½⅓⅔¼¾⅛⅜⅝⅞])?$/

/** The words figures are said as: "24" vierundzwanzig, "1½" eineinhalb, "1,5" eins Komma fünf, "1:30" eins dreißig. Null for what is no figure. */
export function spokenNumber(word: string): string[] | null {
  const fraction = FRACTIONS[word]
  if (fraction !== undefined) return [SIGNS[fraction]!]
  const match = word === '' ? null : FIGURE.exec(word)
  if (!match) return null
  const [, whole = '', joint, places, sign] = match
  const said = whole === '' ? [] : figureWords(Number(whole))
  if (places !== undefined) {
    if (joint === ':' || joint === '/') said.push(...figureWords(Number(places)))
    else said.push('komma', ...[...places].flatMap((digit) => figureWords(Number(digit))))
  }
  return sign === undefined ? said : [...said, SIGNS[sign]!]
}

function figureWords(value: number): string[] {
  if (value <= 999) return [numberWords(value)]
  const rest = value % 1000
  return [...figureWords(Math.floor(value / 1000)), 'tausend', ...(rest === 0 ? [] : figureWords(rest))]
}
