import type { Lexicon } from '#plan/line/lexicon.ts'
import { dictionaryOf } from '#plan/line/meanings.ts'

/** Words that the last one of a line may become, in the order of the lexicon; none for a word that is one already, or for less than two letters. */
export function finishing(line: string, lexicon: Lexicon): string[] {
  const begun = lastWord(line).toLocaleLowerCase()
  if (begun.length < 2) return []
  const found = dictionaryOf(lexicon).ways.map(({ written }) => written)
  if (found.some((way) => way.toLocaleLowerCase() === begun)) return []
  return [...new Set(found.filter((way) => way.toLocaleLowerCase().startsWith(begun)))].slice(0, MOST)
}

/** The line with its last word finished, and room for the next. */
export const finished = (line: string, way: string): string => `${line.slice(0, line.length - lastWord(line).length)}${way} `

const lastWord = (line: string): string => /[\p{L}\p{M}-]*$/u.exec(line)![0]

const MOST = 6
