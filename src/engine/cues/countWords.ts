import type { Cue } from '#plan/model.ts'
import { type Token, tokensOf, tokensOfCue } from './tokens.ts'

/** Spoken words of a cue. */
export const wordsOfCue = (cue: Cue): number => sumOf(tokensOfCue(cue))

/**
 * How many words a text is when it is spoken: figures count as they are said ("24" is two,
 * "1½" four, "¾" two).
 */
export const countWords = (text: string): number => sumOf(tokensOf(text))

const sumOf = (tokens: readonly Token[]): number => tokens.reduce((sum, { word }) => sum + wordsOf(word), 0)

function wordsOf(word: string): number {
  if (!/[\d½⅓⅔¼¾⅛⅜⅝⅞]/.test(word)) return 1
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
