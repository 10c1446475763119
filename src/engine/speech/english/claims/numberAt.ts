import type { Token } from '#engine/cues/tokens.ts'

/** A number as it is written or spoken, and the tokens it takes up. */
export interface NumberPhrase {
  value: number
  /** Index of the token after it. */
  next: number
  /** True for figures, false for words. */
  figures: boolean
  /** True where a half, quarter or the like is part of it. */
  fraction: boolean
}

const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
const SMALL = new Map([...ONES.split(' ').map((word, value) => [word, value] as const), ['nought', 0], ['none', 0]])
const TENS = new Map('twenty thirty forty fifty sixty seventy eighty ninety'.split(' ').map((word, i) => [word, 20 + 10 * i]))
const PARTS = new Map([
  ['half', 2],
  ['halves', 2],
  ['third', 3],
  ['thirds', 3],
  ['quarter', 4],
  ['quarters', 4],
  ['sixth', 6],
  ['sixths', 6],
  ['eighth', 8],
  ['eighths', 8],
])
/** "half on" and "quarter on" are said; "third" by itself is a place in a row. */
const ALONE = new Set(['half', 'quarter'])
const SIGNS: Record<string, number> = {
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
/** More digits than anybody says after a point. */
const MOST_DIGITS = 6

/**
 * The number that starts at a token, if one does: "twenty-four", "1½", "¾", "three quarters",
 * "one and a quarter", "half", "a half", "2 and a half", "one hundred and thirty", "zero
 * point two five", "half a dozen". Words up to nine hundred and ninety-nine, which is as far as the tool's own go.
 */
export function numberAt(tokens: readonly Token[], at: number): NumberPhrase | null {
  const token = tokens[at]
  if (token === undefined) return null
  return figures(tokens, at) ?? dozens(tokens, at) ?? fractionAt(tokens, at) ?? words(tokens, at)
}

/** As `numberAt`, with what is only said of legs and beats: "one ten", "one twenty-eight". */
export function rateAt(tokens: readonly Token[], at: number): NumberPhrase | null {
  const hundred = tokens[at] && !tokens[at].ends ? SMALL.get(tokens[at].word) : undefined
  // "Hundred rpm".
  if (hundred === undefined && tokens[at]?.word === 'hundred') return spoken(100, at + 1)
  const rest = hundred === 1 || hundred === 2 ? underHundred(tokens, at + 1) : null
  return rest !== null && rest.value >= 10 ? spoken(100 * hundred! + rest.value, rest.next) : numberAt(tokens, at)
}

function figures(tokens: readonly Token[], at: number): NumberPhrase | null {
  const { word } = tokens[at]!
  const match = /^(\d+(?:[.,]\d+)?)?([½⅓⅔¼¾⅛⅜⅝⅞])?$/.exec(word)
  if (match && word !== '') {
    const whole = match[1] === undefined ? 0 : Number(match[1].replace(',', '.'))
    const part = match[2] === undefined ? 0 : SIGNS[match[2]]!
    const ratio = part === 0 && Number.isInteger(whole) && !tokens[at]!.ends ? ratioOf(tokens[at + 1]?.word ?? '') : null
    if (ratio !== null && ratio < 1) return { value: whole + ratio, next: at + 2, figures: true, fraction: true }
    return withPart(tokens, { value: whole + part, next: at + 1, figures: true, fraction: part > 0 || !Number.isInteger(whole) })
  }
  const ratio = ratioOf(word)
  return ratio === null ? null : { value: ratio, next: at + 1, figures: true, fraction: true }
}

/** "3/4" as a number. */
function ratioOf(word: string): number | null {
  const ratio = /^(\d+)\/(\d+)$/.exec(word)
  return ratio && Number(ratio[2]) > 0 ? Number(ratio[1]) / Number(ratio[2]) : null
}

/** "a dozen", "half a dozen", "two dozen". */
function dozens(tokens: readonly Token[], at: number): NumberPhrase | null {
  const { word, ends } = tokens[at]!
  if (word === 'dozen') return spoken(12, at + 1)
  const times = word === 'a' ? 1 : word === 'half' ? 1 / 2 : SMALL.get(word)
  if (times === undefined || times === 0 || ends) return null
  const article = word === 'half' && tokens[at + 1]?.word === 'a' && !tokens[at + 1]!.ends ? 1 : 0
  return tokens[at + 1 + article]?.word === 'dozen' ? spoken(12 * times, at + 2 + article) : null
}

const NOTHING = { word: '', ends: true }

/** "half", "a half", "a quarter", "three quarters". */
export function fractionAt(tokens: readonly Token[], at: number): NumberPhrase | null {
  const { word, ends } = tokens[at] ?? NOTHING
  const times = word === 'a' || word === 'an' ? 1 : SMALL.get(word)
  if (times === undefined) return ALONE.has(word) ? { value: 1 / PARTS.get(word)!, next: at + 1, figures: false, fraction: true } : null
  const named = PARTS.get(tokens[at + 1]?.word ?? '')
  if (named === undefined || ends) return null
  // "two quarter turns" are two of them; "one quarter turn" is a quarter.
  return { value: times / named, next: at + 2, figures: false, fraction: true }
}

function words(tokens: readonly Token[], at: number): NumberPhrase | null {
  const number = hundreds(tokens, at) ?? underHundred(tokens, at)
  if (number === null) return null
  return withDigits(tokens, number) ?? withPart(tokens, number)
}

const spoken = (value: number, next: number): NumberPhrase => ({ value, next, figures: false, fraction: false })

/** True where the number before a token goes on with it: no clause ends between them. */
const goesOn = (tokens: readonly Token[], next: number): boolean => !tokens[next - 1]!.ends && tokens[next] !== undefined

function underHundred(tokens: readonly Token[], at: number): NumberPhrase | null {
  const word = tokens[at]?.word ?? ''
  const ten = TENS.get(word)
  const one = SMALL.get(word)
  if (ten === undefined) return one === undefined ? null : spoken(one, at + 1)
  const rest = tokens[at]!.ends ? undefined : SMALL.get(tokens[at + 1]?.word ?? '')
  return rest !== undefined && rest > 0 && rest < 10 ? spoken(ten + rest, at + 2) : spoken(ten, at + 1)
}

/** "a hundred", "two hundred and five", "one hundred thirty"; of "one hundred and a half" the hundred alone. */
function hundreds(tokens: readonly Token[], at: number): NumberPhrase | null {
  const { word, ends } = tokens[at]!
  const times = word === 'a' ? 1 : SMALL.get(word)
  if (times === undefined || times < 1 || times > 9 || ends || tokens[at + 1]?.word !== 'hundred') return null
  const whole = spoken(100 * times, at + 2)
  if (!goesOn(tokens, whole.next)) return whole
  const from = tokens[whole.next]!.word === 'and' ? whole.next + 1 : whole.next
  const rest = tokens[from] && fractionAt(tokens, from) === null ? underHundred(tokens, from) : null
  return rest === null || rest.value === 0 ? whole : spoken(whole.value + rest.value, rest.next)
}

/** "… point two five": a decimal, digit by digit; null where no digit follows. */
function withDigits(tokens: readonly Token[], number: NumberPhrase): NumberPhrase | null {
  if (!goesOn(tokens, number.next) || tokens[number.next]!.word !== 'point') return null
  let digits = ''
  let next = number.next + 1
  for (; digits.length < MOST_DIGITS && goesOn(tokens, next); next++) {
    const digit = SMALL.get(tokens[next]?.word ?? '')
    if (digit === undefined || digit > 9) break
    digits += digit
  }
  return digits === '' ? null : { ...number, value: Number(`${number.value}.${digits}`), next, fraction: true }
}

/** "… and a half", "… and three quarters". */
function withPart(tokens: readonly Token[], number: NumberPhrase): NumberPhrase {
  if (number.fraction || tokens[number.next - 1]!.ends || tokens[number.next]?.word !== 'and' || tokens[number.next + 1] === undefined) {
    return number
  }
  const part = fractionAt(tokens, number.next + 1)
  return part === null ? number : { ...number, value: number.value + part.value, next: part.next, fraction: true }
}
