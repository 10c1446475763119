import { endsAt, isUnit, type Reader, wordAt } from './claimReader.ts'
import { fractionAt, type NumberPhrase, numberAt } from './numberPhrase.ts'

/** A number, or one with the unit in its middle: "a turn and a half", "two turns and a quarter"; also "a turn" and "a full turn" by themselves. */
export function amountAt(reader: Reader, at: number): NumberPhrase | null {
  return withUnitInside(reader, at, (word) => isUnit(reader, word)) ?? oneUnit(reader, at) ?? numberAt(reader.tokens, at)
}

/** "a turn", "a full turn", where it is said to go on or off. */
function oneUnit(reader: Reader, at: number): NumberPhrase | null {
  if (wordAt(reader, at) !== 'a') return null
  const unit = /^(?:full|whole)$/.test(wordAt(reader, at + 1)) ? at + 2 : at + 1
  const next = endsAt(reader, unit) ? '' : wordAt(reader, unit + 1)
  const turns = /^(?:add|take)$/.test(wordAt(reader, at - 1)) || /^(?:on|off)$/.test(next)
  return isUnit(reader, wordAt(reader, unit)) && turns ? { value: 1, next: unit + 1, figures: false, fraction: false } : null
}

/** A number with a unit before its fraction, the unit being one that is meant: "a minute and a half". */
export function withUnitInside(reader: Reader, at: number, isMeant: (word: string) => boolean): NumberPhrase | null {
  const article: NumberPhrase = { value: 1, next: at + 1, figures: false, fraction: false }
  const whole = wordAt(reader, at) === 'a' && isMeant(wordAt(reader, at + 1)) ? article : numberAt(reader.tokens, at)
  if (whole === null || whole.fraction || !isMeant(wordAt(reader, whole.next)) || endsAt(reader, whole.next)) return null
  if (wordAt(reader, whole.next + 1) !== 'and' || whole.next + 2 >= reader.tokens.length) return null
  const part = fractionAt(reader.tokens, whole.next + 2)
  return part && { ...whole, value: whole.value + part.value, next: part.next, fraction: true }
}
