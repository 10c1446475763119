import { type Own, ownPatternsIn } from '#features/drafting/ownPatternCommand.ts'
import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import type { AppState } from '#store/state.ts'
import { tell } from '#words/words.ts'

/** A pattern that can be added whole, the page's or one's own. */
export type Found = { id: string; name: string; pattern: BlockPattern } | { id: string; name: string; own: Own }

/**
 * Patterns in whose names every word that is typed begins a word; those whose names begin with what is typed come first,
 * one's own before the page's. None for an empty line, nor for one that is the name of a built-in one: the line says that itself.
 */
export function patternsFound(text: string, state: Pick<AppState, 'profiles'>): readonly Found[] {
  const typed = text.trim().toLocaleLowerCase()
  if (typed === '') return []
  const begun = wordsOf(typed)
  const all: Found[] = [
    ...ownPatternsIn(state).map((own) => ({ id: `own.${own.id}`, name: own.name, own })),
    ...PATTERNS.map((pattern) => ({ id: pattern.id, name: tell(pattern.name), pattern })),
  ]
  const fitting = all.filter((found) => {
    const name = found.name.toLocaleLowerCase()
    return !('pattern' in found && name === typed) && begun.every((word) => wordsOf(name).some((whole) => whole.startsWith(word)))
  })
  const starts = ({ name }: Found) => name.toLocaleLowerCase().startsWith(typed)
  return [...fitting.filter(starts), ...fitting.filter((found) => !starts(found))].slice(0, MOST)
}

const wordsOf = (text: string): string[] => text.split(/[\s-]+/).filter((word) => word !== '')

const MOST = 6
