import { numberWords } from '#engine/speech/english/numberWords.ts'

const SIGNS: Readonly<Record<string, string>> = {
  '½': 'a half',
  '⅓': 'a third',
  '⅔': 'two thirds',
  '¼': 'a quarter',
  '¾': 'three quarters',
  '⅛': 'an eighth',
  '⅜': 'three eighths',
  '⅝': 'five eighths',
  '⅞': 'seven eighths',
}
/** Fractions of figures that are said as such: "3/4". */
const FRACTIONS: Readonly<Record<string, string>> = { '1/2': '½', '1/3': '⅓', '2/3': '⅔', '1/4': '¼', '3/4': '¾', '1/8': '⅛' }

const FIGURE = /^(\d*)(?:([.,:/])(\d+))?([½⅓⅔¼¾⅛⅜⅝⅞])?$/

/**
 * The words figures are said as: "24" twenty-four, "1½" one and a half, "¾" three quarters,
 * "1:30" one thirty, "1.5" one point five, "3/4" three quarters. Null for what is no figure.
 */
export function spokenNumber(word: string): string[] | null {
  const fraction = FRACTIONS[word]
  if (fraction !== undefined) return SIGNS[fraction]!.split(' ')
  const match = word === '' ? null : FIGURE.exec(word)
  if (!match) return null
  const [, whole = '', joint, places, sign] = match
  const said = whole === '' ? [] : figureWords(Number(whole))
  if (places !== undefined) {
    if (joint === ':' || joint === '/') said.push(...figureWords(Number(places)))
    else said.push('point', ...[...places].flatMap((digit) => figureWords(Number(digit))))
  }
  if (sign === undefined) return said
  // "three quarters" and "a half" alone, "one and a half" behind a whole number.
  return said.length === 0 ? SIGNS[sign]!.split(' ') : [...said, 'and', ...SIGNS[sign]!.split(' ')]
}

function figureWords(value: number): string[] {
  if (value <= 999) return numberWords(value).split(/[ -]/)
  const rest = value % 1000
  return [...figureWords(Math.floor(value / 1000)), 'thousand', ...(rest === 0 ? [] : figureWords(rest))]
}
