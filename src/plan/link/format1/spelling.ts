import { readVarint, writeVarint } from '#plan/link/varint.ts'
import { COMMON, RARER } from './tradeWords.ts'

/**
 * How a text is likely to be capitalised: at the start of a sentence, or nowhere.
 */
export type Manner = 'sentences' | 'small'

/**
 * Bytes: the end of a text, the same after a full stop, a character in full (its code point
 * follows), two leads into the rarer words, and one for each common word.
 */
const END = 0
const STOP_AND_END = 2
const IN_FULL = 1
const RARER_LEADS = [0x1e, 0x1f]
const COMMON_CODES = [...range(0x03, 0x1d), ...range(0x7f, 0xff)]

const CODES = new Map<string, number[]>([
  ...COMMON.map((word, i): [string, number[]] => [word, [COMMON_CODES[i]!]]),
  ...RARER.map((word, i): [string, number[]] => [word, [RARER_LEADS[i >> 8]!, i & 0xff]]),
])
const LONGEST = Math.max(...[...CODES.keys()].map((word) => word.length))
const COMMON_BY_CODE = new Map(COMMON.map((word, i) => [COMMON_CODES[i]!, word]))

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i)
}

/**
 * Writes a text: a word of the tables as its code, which stands for the space before it
 * too (there is none at the start of a text); any other character as itself.
 */
export function spell(text: string, manner: Manner, bytes: number[]): void {
  const stops = text.endsWith('.')
  const swapped = swapCase(stops ? text.slice(0, -1) : text, manner)
  for (let at = 0; at < swapped.length; ) {
    const start = at === 0 ? 0 : swapped[at] === ' ' ? at + 1 : -1
    const word = start < 0 ? undefined : longestWord(swapped, start)
    if (word !== undefined) {
      bytes.push(...CODES.get(word)!)
      at = start + word.length
    } else at += spellCharacter(swapped.codePointAt(at)!, bytes)
  }
  bytes.push(stops ? STOP_AND_END : END)
}

function longestWord(text: string, start: number): string | undefined {
  for (let length = Math.min(LONGEST, text.length - start); length > 0; length--) {
    const word = text.slice(start, start + length)
    if (CODES.has(word)) return word
  }
  return undefined
}

/** Returns how many places of the text the character took. */
function spellCharacter(character: number, bytes: number[]): number {
  if (character >= 0x20 && character < 0x7f) bytes.push(character)
  else {
    bytes.push(IN_FULL)
    writeVarint(bytes, character)
  }
  return character > 0xffff ? 2 : 1
}

/** Reads a text and says where it ends; undefined where the bytes are no text, or one of more characters than are allowed. */
export function unspell(bytes: Uint8Array, at: number, manner: Manner, most: number): { text: string; next: number } | undefined {
  let text = ''
  for (let next = at; next < bytes.length && text.length <= most; ) {
    const byte = bytes[next++]!
    if (byte === END || byte === STOP_AND_END) return { text: swapCase(text, manner) + (byte === END ? '' : '.'), next }
    if (byte >= 0x20 && byte < 0x7f) {
      text += String.fromCharCode(byte)
    } else if (byte === IN_FULL) {
      const read = readVarint(bytes, next)
      if (!read || read.value > 0x10ffff) return undefined
      text += String.fromCodePoint(read.value)
      next = read.next
    } else {
      const lead = RARER_LEADS.indexOf(byte)
      const word = lead < 0 ? COMMON_BY_CODE.get(byte) : RARER[lead * 256 + (bytes[next++] ?? 0)]
      if (word === undefined) return undefined
      text += text === '' ? word : ` ${word}`
    }
  }
  return undefined
}

/** Where a capital is expected: names have one at every word. */
const CAPITALS = { sentences: /(^|[.!?] )([A-Za-z])/g, small: /(?!)/g, names: /(^|[ (-])([A-Za-z])/g } satisfies Record<
  Manner | 'names',
  RegExp
>

/**
 * Turns expected capitals into small letters and unexpected small ones into capitals, so that
 * words are found in the tables and like is written alike. Twice is nothing.
 */
export function swapCase(text: string, manner: keyof typeof CAPITALS): string {
  return text.replace(CAPITALS[manner], (_, before: string, letter: string) => {
    const small = letter.toLowerCase()
    return before + (letter === small ? letter.toUpperCase() : small)
  })
}
