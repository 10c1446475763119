import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { Ride } from '#plan/model.ts'
import { hitId, occurrences, type Search, type WordHit } from '#plan/texts/findWords.ts'
import { mapTexts, type TextPlace } from '#plan/texts/ownTexts.ts'
import { say } from '#words/said.ts'

/** Words to look for, what to put there, and where. */
interface Replacing {
  readonly search: Search
  readonly by: string
  /** Ids of the hits that are meant (see findWords). */
  readonly hits: ReadonlySet<string>
}

/** A text that cannot take the words: it would be longer than a document may have it, or empty where something is needed. */
interface RefusedText {
  readonly place: TextPlace
  readonly problem: 'long' | 'empty'
  /** Characters it would have. */
  readonly length: number
}

/**
 * Puts words in the place of others in a ride's own texts, at the hits that are meant and nowhere else. Where capitals do not
 * count, a word that began with one begins with one again. Nothing is changed where one of the texts could not take it.
 */
export function replaceWords(ride: Ride, replacing: Replacing): Command {
  let count = 0
  replaced(ride, replacing, () => count++)
  const { search, by } = replacing
  return makeCommand(say('commands.replacedWords', { from: search.words, to: by, count }), (before) =>
    refusedTexts(before, replacing).length > 0 ? before : replaced(before, replacing),
  )
}

/** The texts that could not take the words, in the order of the ride. */
export function refusedTexts(ride: Ride, replacing: Replacing): RefusedText[] {
  const refused: RefusedText[] = []
  mapTexts(ride, (text, place) => {
    const next = replacedIn(text, place, replacing)
    if (next === text) return text
    if (next.length > place.most) refused.push({ place, problem: 'long', length: next.length })
    else if (place.needed && next.trim() === '') refused.push({ place, problem: 'empty', length: 0 })
    return text
  })
  return refused
}

const replaced = (ride: Ride, replacing: Replacing, onHit?: () => void): Ride =>
  mapTexts(ride, (text, place) => replacedIn(text, place, replacing, onHit))

function replacedIn(text: string, place: TextPlace, { search, by, hits }: Replacing, onHit?: () => void): string {
  let next = ''
  let done = 0
  for (const { from, to } of occurrences(text, search)) {
    if (!hits.has(hitId(place, from))) continue
    onHit?.()
    next += text.slice(done, from) + fitted(text.slice(from, to), search, by)
    done = to
  }
  return done === 0 ? text : next + text.slice(done)
}

/** The words that would stand in the place of a hit. */
export const replacedHit = ({ text, from, to }: WordHit, search: Search, by: string): string => fitted(text.slice(from, to), search, by)

/** The new words as they stand in the place of the old ones: “Hill” becomes “Climb” where “hill” becomes “climb”. */
function fitted(old: string, { words, matchCase }: Search, by: string): string {
  const first = [...old][0]!
  const isCapital = first !== first.toLowerCase() && [...words][0] !== first
  return matchCase || !isCapital ? by : by.slice(0, 1).toUpperCase() + by.slice(1)
}
