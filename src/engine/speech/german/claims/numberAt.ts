import type { Token } from '#engine/cues/tokens.ts'

/** A number as it is written or spoken, and the tokens it takes up. */
export interface NumberPhrase {
  value: number
  /** Index of the token after it. */
  next: number
  /** True for figures, false for words. */
  figures: boolean
  /** True where it was written with a comma or a point. */
  decimal: boolean
  /** True where a part of one is in it. */
  fraction: boolean
  /** True for "ein", "eine", which most often only lead on to a noun. */
  article: boolean
}

const SMALL = new Map(
  'null zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn'
    .split(' ')
    .map((word, i) => [word, i === 0 ? 0 : i + 1] as const),
)
const ONE = /^(?:ein|eins|eine|einen|einem|einer|eines)$/
const TENS = new Map('zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig'.split(' ').map((word, i) => [word, 20 + 10 * i]))
const PARTS: ReadonlyMap<string, number> = new Map([
  ['halb', 1 / 2],
  ['einhalb', 1 / 2],
  ['drittel', 1 / 3],
  ['eindrittel', 1 / 3],
  ['zweidrittel', 2 / 3],
  ['viertel', 1 / 4],
  ['einviertel', 1 / 4],
  ['dreiviertel', 3 / 4],
  ['achtel', 1 / 8],
  ['einachtel', 1 / 8],
  ['dreiachtel', 3 / 8],
])
const SIGNS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}

/**
 * The number that starts at a token, if one does: "vierundzwanzig", "1½", "dreiviertel",
 * "anderthalb", "zweieinhalb", "zwei Komma fünf", "eine halbe", "drei Viertel", "hundertzwanzig".
 */
export function numberAt(tokens: readonly Token[], at: number): NumberPhrase | null {
  const token = tokens[at]
  if (token === undefined) return null
  return figuresAt(token, at) ?? partAt(tokens, at) ?? wordsAt(tokens, at)
}

function figuresAt({ word }: Token, at: number): NumberPhrase | null {
  const ratio = /^(\d+)\/(\d+)$/.exec(word)
  const as = { next: at + 1, figures: true, article: false }
  if (ratio) {
    const value = Number(ratio[1]) / Number(ratio[2])
    return value < 1 ? { ...as, value, decimal: false, fraction: true } : null
  }
  const match = /^(\d+(?:[.,]\d+)?)?([½⅓⅔¼¾⅛⅜⅝⅞])?$/.exec(word)
  if (!match || word === '') return null
  const whole = match[1] === undefined ? 0 : Number(match[1].replace(',', '.'))
  const value = whole + (match[2] === undefined ? 0 : SIGNS[match[2]]!)
  return { ...as, value, decimal: /[.,]/.test(word), fraction: !Number.isInteger(value) }
}

const word = (value: number, next: number, fraction = false, article = false): NumberPhrase => ({
  value,
  next,
  figures: false,
  decimal: false,
  fraction,
  article,
})

/** "halb", "eine halbe", "ein Viertel", "eine dreiviertel", "drei Viertel". */
function partAt(tokens: readonly Token[], at: number): NumberPhrase | null {
  const own = partOf(tokens[at]!.word)
  if (own !== null) return word(own, at + 1, true)
  const times = ONE.test(tokens[at]!.word) || tokens[at]!.word === 'die' ? 1 : SMALL.get(tokens[at]!.word)
  if (times === undefined || tokens[at]!.ends) return null
  const part = partOf(tokens[at + 1]?.word ?? '')
  return part === null || (times > 1 && part === 1 / 2) ? null : word(times * part, at + 2, true)
}

/** "halbe", "halben", "viertel", "dreiviertel". */
const partOf = (text: string): number | null => PARTS.get(/^halb(?:e|en|er|es|em)$/.test(text) ? 'halb' : text) ?? null

function wordsAt(tokens: readonly Token[], at: number): NumberPhrase | null {
  const text = tokens[at]!.word
  if (text === 'anderthalb') return word(1.5, at + 1, true)
  if (ONE.test(text)) return withComma(tokens, word(1, at + 1, false, text !== 'eins'))
  const value = wholeOf(text)
  if (value !== null) return withComma(tokens, word(value, at + 1))
  // "zweieinhalb", "eindreiviertel"
  const mixed = /^(.+?)(einhalb|einviertel|dreiviertel|eindrittel|zweidrittel)$/.exec(text)
  const whole = mixed && (mixed[1] === 'ein' ? 1 : wholeOf(mixed[1]!))
  return mixed && whole !== null ? word(whole + PARTS.get(mixed[2]!)!, at + 1, true) : null
}

/** "zwei Komma fünf" */
function withComma(tokens: readonly Token[], number: NumberPhrase): NumberPhrase {
  if (tokens[number.next - 1]!.ends || tokens[number.next]?.word !== 'komma' || tokens[number.next]!.ends) return number
  let digits = ''
  let next = number.next + 1
  for (; next < tokens.length && digits.length < 3; next++) {
    const digit = tokens[next]!.word === 'eins' ? 1 : SMALL.get(tokens[next]!.word)
    if (digit === undefined || digit > 9) break
    digits += digit
    if (tokens[next]!.ends) {
      next++
      break
    }
  }
  return digits === '' ? number : { ...word(Number(`${number.value}.${digits}`), next, true), decimal: true }
}

/** A whole number written as one word, up to 999. */
function wholeOf(text: string): number | null {
  const small = SMALL.get(text) ?? TENS.get(text)
  if (small !== undefined) return small
  const joined = /^(ein|zwei|drei|vier|fünf|sechs|sieben|acht|neun)und(.+)$/.exec(text)
  const ten = joined && TENS.get(joined[2]!)
  if (joined && ten !== undefined && ten !== null) return ten + (joined[1] === 'ein' ? 1 : SMALL.get(joined[1]!)!)
  const hundred = /^(ein|zwei|drei|vier|fünf|sechs|sieben|acht|neun)?hundert(?:und)?(.*)$/.exec(text)
  if (!hundred) return null
  const rest = hundred[2] === '' ? 0 : hundred[2] === 'eins' ? 1 : wholeOf(hundred[2]!)
  const hundreds = hundred[1] === undefined || hundred[1] === 'ein' ? 1 : SMALL.get(hundred[1])!
  return rest === null || rest >= 100 ? null : 100 * hundreds + rest
}

/** "zweite", "3.", "siebter": the place and the ending it has; null for no ordinal. */
export function ordinalOf(text: string): { value: number; ending: string } | null {
  const match = /^(.+?)(e|er|en|es|em)$/.exec(text)
  const value = match ? ORDINALS.get(match[1]!) : undefined
  return value === undefined ? null : { value, ending: match![2]! }
}

const ORDINALS: ReadonlyMap<string, number> = new Map(
  ['erst', 'zweit', 'dritt', 'viert', 'fünft', 'sechst', 'siebt', 'acht', 'neunt', 'zehnt', 'elft', 'zwölft'].map((stem, i) => [
    stem,
    i + 1,
  ]),
)
