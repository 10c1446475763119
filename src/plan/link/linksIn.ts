import { unwrapped } from './unwrapped.ts'

/** A place in a text where a link begins, or something that looks like one. */
export interface LinkStart {
  /** The text it was found in, as `unwrapped` gives it. */
  text: string
  /** The number of its format, 1 to 999,999. */
  format: number
  /** Where its letters begin, behind the dot. */
  from: number
  /** Whether it stands where links stand: behind a # or at the beginning of the text. */
  isPlaced: boolean
  /** Whether it begins a word. */
  isApart: boolean
}

/** A text as it may be read, and what may stand between the letters of a link in it. */
interface Reading {
  starts: Iterable<LinkStart>
  /** Sticky. */
  between: RegExp
}

/** A blank or a line's end may have got between the head's characters. */
const HEAD = /r[ \n]?([1-9](?:[ \n]?[0-9]){0,5})[ \n]?\./gi
const LETTERS = /[A-Za-z0-9_-]+/y
const WHITE = /[ \n]/y
/** Anything but letters, and the dot that another link's head has. */
const ANYTHING = /[^A-Za-z0-9_.-]+/y

/**
 * The links in any text, most careful reading first: with nothing between a link's letters but the ends of lines and blanks;
 * then with anything between them. Only a link's checksum tells which reading is right; where none is, the first one tells why.
 */
export function* linksIn(text: string): Generator<Reading> {
  const texts = new Set([true, false].map((equals) => unwrapped(text, equals)))
  for (const read of texts) yield { starts: startsIn(read), between: WHITE }
  for (const read of texts) yield { starts: startsIn(withHyphens(read)), between: ANYTHING }
}

/** The letters of a link, at most so many. */
export function lettersFrom({ text, from }: LinkStart, most: number, between: RegExp): string {
  let letters = ''
  for (let at = from; at < text.length && letters.length < most; ) {
    const run = matchAt(LETTERS, text, at)
    const gap = run === '' ? matchAt(between, text, at) : ''
    if (run === '' && gap === '') break
    letters += run.slice(0, most - letters.length)
    at += run.length + gap.length
  }
  return letters
}

/** What a sticky expression matches at a place; empty where it does not. */
export function matchAt(sticky: RegExp, text: string, at: number): string {
  sticky.lastIndex = at
  return sticky.exec(text)?.[0] ?? ''
}

function* startsIn(text: string): Generator<LinkStart> {
  for (const { 0: head, 1: digits, index } of text.matchAll(HEAD)) {
    const before = text.slice(Math.max(0, index - 3), index)
    const from = index + head.length
    const isFirst = index <= 3 && !/[A-Za-z0-9]/.test(before) && !/\s/.test(text.charAt(from))
    yield {
      text,
      format: Number(digits!.replace(/\D/g, '')),
      from,
      isPlaced: isFirst || /#[^A-Za-z0-9]*$/.test(before),
      isApart: !/[A-Za-z0-9]$/.test(before),
    }
  }
}

/** Typing aids make one longer dash of two hyphens. */
const withHyphens = (text: string): string => text.replace(/[\u2013\u2014]/g, '--')
