import type { Ride } from '#plan/model.ts'
import { mapTexts, type TextPlace } from './ownTexts.ts'

/** What is looked for in a ride's own words. */
export interface Search {
  /** As it was typed; nothing is found by spaces alone. */
  readonly words: string
  /** Capitals count. */
  readonly matchCase: boolean
  /** Not as a part of a longer word. */
  readonly wholeWords: boolean
}

/** One place where the words stand. */
export interface WordHit {
  /** The only one of its ride: its text and where in it. */
  readonly id: string
  readonly place: TextPlace
  /** The whole text, and the characters of it that were found. */
  readonly text: string
  readonly from: number
  readonly to: number
}

/** Every place where words stand in a ride, in the order of the ride. Cost: linear in its letters. */
export function findWords(ride: Ride, search: Search): WordHit[] {
  const hits: WordHit[] = []
  mapTexts(ride, (text, place) => {
    for (const { from, to } of occurrences(text, search)) hits.push({ id: hitId(place, from), place, text, from, to })
    return text
  })
  return hits
}

export const hitId = ({ key }: TextPlace, from: number): string => `${key} @${from}`

const WORD_BEFORE = /[\p{L}\p{M}\p{N}]$/u
const WORD_AFTER = /^[\p{L}\p{M}\p{N}]/u

/** Where words stand in a text, one after another and never one in another. */
export function occurrences(text: string, { words, matchCase, wholeWords }: Search): { from: number; to: number }[] {
  if (words.trim() === '') return []
  const pattern = new RegExp(words.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&'), matchCase ? 'gu' : 'giu')
  const found: { from: number; to: number }[] = []
  for (const match of text.matchAll(pattern)) {
    const from = match.index
    const to = from + match[0].length
    // A word goes on only where letters stand on both sides of the seam.
    const runsOn =
      (WORD_BEFORE.test(text.slice(Math.max(0, from - 2), from)) && WORD_AFTER.test(match[0])) ||
      (WORD_BEFORE.test(match[0]) && WORD_AFTER.test(text.slice(to, to + 2)))
    if (!wholeWords || !runsOn) found.push({ from, to })
  }
  return found
}
