import { fromBase64url, toBase64url } from './base64url.ts'
import { crc32 } from './crc32.ts'
import { faultOf, isLikeLink, type LinkFault, type Missing } from './linkFault.ts'
import { type LinkStart, lettersFrom, linksIn } from './linksIn.ts'
import { readVarint, writeVarint } from './varint.ts'

/** The format links are written in, and the newest there is. Once another follows it, it stays readable for ever. */
const LINK_FORMAT = 1
const HEAD = `r${LINK_FORMAT}.`

/** Longest text looked at: beyond what a browser carries in an address. */
const MAX_LINK_LENGTH = 2_000_000

const CHECKSUM_BYTES = 4
/** Letters that hold the longest number a link can begin with. */
const LENGTH_LETTERS = 12

type Opened =
  | {
      ok: true
      payload: Uint8Array
      /** The link as it was made, without address and #. */
      link: string
      /** How many other links there are in the text. */
      others: number
    }
  | ({ ok: false; fault: LinkFault } & Missing)

/**
 * Puts a payload into the text of a link: `r`, the format's number, a dot, and in
 * base64url the payload's length, its CRC-32 and the payload itself.
 */
export function seal(payload: Uint8Array): string {
  const head: number[] = []
  writeVarint(head, payload.length)
  const checksum = crc32(payload)
  for (let shift = 0; shift < 8 * CHECKSUM_BYTES; shift += 8) head.push((checksum >>> shift) & 0xff)
  const sealed = new Uint8Array(head.length + payload.length)
  sealed.set(head)
  sealed.set(payload, head.length)
  return HEAD + toBase64url(sealed)
}

/**
 * Takes the payload out of the first link in a text of which every bit arrived. A link says how long it is and has a
 * checksum: those decide what belongs to it, whatever was put around it, behind it or in between on its way.
 *
 * @param text a whole address, a fragment with or without its #, or a message with one in it, as mail and chat pass it on
 * @returns where no link is whole, what is wrong with the first one
 */
export function open(text: string): Opened {
  if (text.length > MAX_LINK_LENGTH) return { ok: false, fault: 'tooLong' }
  let refused: Opened | undefined
  for (const { starts, between } of linksIn(text)) {
    const whole = new Map<string, Uint8Array>()
    for (const start of starts) {
      const read = start.format === LINK_FORMAT ? wholeLink(start, between) : undefined
      if (read) whole.set(read.link, read.payload)
      else if (whole.size === 0 && isLikeLink(start)) refused ??= { ok: false, ...refusal(start, between) }
    }
    const [first] = whole
    if (first) return { ok: true, payload: first[1], link: first[0], others: whole.size - 1 }
  }
  return refused ?? { ok: false, fault: 'notOurs' }
}

function wholeLink(start: LinkStart, between: RegExp): { link: string; payload: Uint8Array } | undefined {
  const stated = statedLetters(lettersFrom(start, LENGTH_LETTERS, between))
  if (stated === undefined || stated > start.text.length - start.from) return undefined
  const letters = lettersFrom(start, stated, between)
  const payload = letters.length === stated ? unseal(letters) : undefined
  return payload && { link: HEAD + letters, payload }
}

function refusal(start: LinkStart, between: RegExp): { fault: LinkFault } & Missing {
  if (start.format > LINK_FORMAT) return { fault: 'tooNew' }
  const beginning = lettersFrom(start, LENGTH_LETTERS, between)
  const stated = statedLetters(beginning)
  const isNone = stated === undefined ? beginning.length === LENGTH_LETTERS : stated > MAX_LINK_LENGTH
  const found = faultOf(start, HEAD.length, stated)
  return isNone && found.fault === 'truncated' ? { fault: 'damaged' } : found
}

/** How many letters a link has, as its first ones say; undefined where they do not. */
function statedLetters(beginning: string): number | undefined {
  // What is left of a text that was cut in the middle of a byte still says it.
  const bytes = fromBase64url(beginning.slice(0, beginning.length - (beginning.length % 4)))
  const length = bytes && readVarint(bytes, 0)
  return length && Math.ceil(((length.next + CHECKSUM_BYTES + length.value) * 4) / 3)
}

/** The payload of a link's letters; undefined where the checksum is another, or nothing is in it, which letters A alone would say. */
function unseal(letters: string): Uint8Array | undefined {
  const sealed = fromBase64url(letters)
  const length = sealed && readVarint(sealed, 0)
  if (!sealed || !length?.value) return undefined
  let checksum = 0
  for (let i = 0; i < CHECKSUM_BYTES; i++) checksum += sealed[length.next + i]! * 2 ** (8 * i)
  const payload = sealed.subarray(length.next + CHECKSUM_BYTES)
  return crc32(payload) === checksum ? payload : undefined
}
