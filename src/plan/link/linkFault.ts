import { type LinkStart, matchAt } from './linksIn.ts'

/** Why a text could not be opened as a link. */
export type LinkFault = 'notOurs' | 'tooLong' | 'tooNew' | 'truncated' | 'recased' | 'damaged' | 'tooLarge'

/** How much of a link did not arrive, in characters, of how many from its head on; absent where that is not known. */
export interface Missing {
  missing?: number
  of?: number
}

const LETTERS = /[A-Za-z0-9_-]+/y
const WHITE = /[ \n]?/y
/** One character in place of another; not one that ends a sentence, an address or a part of it, or brackets it. */
const WRONG = /[^\sA-Za-z0-9_.,:;!?#&/…()[\]{}<>"'“”‘’«»-]/uy

/** Letters that no word of a language has. */
const MORE_THAN_A_WORD = 16
/** As many letters of a real link are never all of one case: once in a hundred thousand. */
const ENOUGH_TO_TELL_CASE = 24
/** With so much of it there, a link with a wrong character in it is damaged and not cut. */
const NEARLY_ALL = 0.9

/**
 * Whether what was found is a link at all, or a word of a text such as "r2." that looks like the beginning of one.
 */
export const isLikeLink = (start: LinkStart): boolean =>
  start.isPlaced || (start.isApart && matchAt(LETTERS, start.text, start.from).length >= MORE_THAN_A_WORD)

/**
 * What is wrong with a link of which no reading has the right checksum.
 *
 * @param head characters before its letters
 * @param stated how many letters it says it has; undefined where it does not say
 */
export function faultOf(start: LinkStart, head: number, stated: number | undefined): { fault: LinkFault } & Missing {
  const there = runOf(start, stated, false)
  if (there === '' && /\S/.test(start.text.charAt(start.from))) return { fault: 'damaged' }
  if (there.length >= ENOUGH_TO_TELL_CASE && (!/[A-Z]/.test(there) || !/[a-z]/.test(there))) return { fault: 'recased' }
  if (stated === undefined) return { fault: 'truncated' }
  const behindWrong = runOf(start, stated, true).length
  const isCut = there.length < stated && (behindWrong === there.length || behindWrong < NEARLY_ALL * stated)
  if (!isCut) return { fault: 'damaged' }
  return { fault: 'truncated', missing: stated - there.length, of: head + stated }
}

/**
 * As many letters as seem to be of the link: those on the next line are, words are not.
 *
 * @param withWrong past single wrong characters in it
 */
function runOf({ text, from }: LinkStart, stated: number | undefined, withWrong: boolean): string {
  let run = matchAt(LETTERS, text, from)
  let last = run.length
  for (let at = from + run.length; at < text.length; ) {
    const wrong = withWrong ? matchAt(WRONG, text, at) : ''
    const gap = wrong || matchAt(WHITE, text, at)
    const next = matchAt(LETTERS, text, at + gap.length)
    at += gap.length + next.length
    const goesOn =
      wrong !== '' ||
      next.length >= Math.min(MORE_THAN_A_WORD, last) ||
      run.length + next.length === stated ||
      isRest(next, at === text.length)
    if (gap === '' || next === '' || !goesOn) break
    run += next
    last = next.length
  }
  return run
}

/** The short last line of a link that nothing follows. */
const isRest = (letters: string, isEnd: boolean): boolean => isEnd && !/^[A-Z]?[a-z]*$/.test(letters)
