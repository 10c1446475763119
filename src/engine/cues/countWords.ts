import type { Cue } from '#plan/model.ts'
import { tokensOf } from './tokens.ts'

const counted = new WeakMap<Cue, number>()

/** Spoken words of a cue; counted once for each cue object. */
export function wordsOfCue(cue: Cue): number {
  let words = counted.get(cue)
  if (words === undefined) {
    words = countWords(cue.text)
    counted.set(cue, words)
  }
  return words
}

/**
 * How many words a text is when it is spoken: figures count as they are said ("24" is two,
 * "1½" four, "¾" two).
 */
export function countWords(text: string): number {
  return tokensOf(text).reduce((sum, { word }) => sum + wordsOf(word), 0)
}

function wordsOf(word: string): number {
  const match = /^(\d*)(?:[.,:/](\d+))?([½⅓⅔¼¾⅛⅜⅝⅞])?$/.exec(word)
  if (!match || word === '') return 1
  const [, whole = '', places, sign] = match
  const said = whole === '' ? 0 : figureWords(Number(whole))
  if (places !== undefined) return said + (word.includes(':') || word.includes('/') ? figureWords(Number(places)) : 1 + places.length)
  // "one and a half", but "a half" or "three quarters" alone.
  return said + (sign === undefined ? 0 : said === 0 ? 2 : 3)
}

function figureWords(value: number): number {
  if (value <= 20 || (value < 100 && value % 10 === 0)) return 1
  if (value < 100) return 2
  const rest = value % 100
  return 2 + (rest === 0 ? 0 : 1 + figureWords(rest))
}
