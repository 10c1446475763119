import { fromBase64url, toBase64url } from './base64url.ts'
import { crc32 } from './crc32.ts'
import { readVarint, writeVarint } from './varint.ts'

/** The format links are written in, and the newest there is. Once another follows it, it stays readable for ever. */
const LINK_FORMAT = 1

/** Longest text looked at: beyond what a browser carries in an address. */
const MAX_LINK_LENGTH = 2_000_000

const CHECKSUM_BYTES = 4

/** Why a text could not be opened as a link. */
export type LinkFault = 'notOurs' | 'tooLong' | 'tooNew' | 'truncated' | 'damaged' | 'tooLarge'

type Opened = { ok: true; payload: Uint8Array } | { ok: false; fault: LinkFault }

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
  return `r${LINK_FORMAT}.${toBase64url(sealed)}`
}

/**
 * Takes the payload out of a link and checks that every bit of it arrived.
 * @param text a whole address, a fragment with or without its #, or the same with the
 *   white space and brackets that mail and chat put around and into it, as they are or as
 *   an address writes them
 */
export function open(text: string): Opened {
  if (text.length > MAX_LINK_LENGTH) return { ok: false, fault: 'tooLong' }
  const parts = /^r([1-9][0-9]{0,5})\.(.*)$/s.exec(fragmentOf(text))
  if (!parts) return { ok: false, fault: 'notOurs' }
  const format = Number(parts[1])
  if (format > LINK_FORMAT) return { ok: false, fault: 'tooNew' }
  const letters = parts[2]!
  // A text cut in the middle of a byte is no base64url any more; what is left of it still tells how much is missing.
  const whole = fromBase64url(letters)
  const sealed = whole ?? fromBase64url(clipped(letters))
  if (!sealed) return { ok: false, fault: 'damaged' }
  const opened = unseal(sealed)
  if (typeof opened === 'string') return { ok: false, fault: opened }
  return whole ? { ok: true, payload: opened } : { ok: false, fault: 'damaged' }
}

/** What a browser writes in an address for white space, quotes and angle brackets; a link has no % of its own. */
const WRITTEN = /%(?:0[9AD]|2[027]|3[CE])/gi

function fragmentOf(text: string): string {
  const bare = text
    .replace(WRITTEN, decodeURIComponent)
    .replace(/\s+/g, '')
    .replace(/^[<("']+|[>)"',.;]+$/g, '')
  return bare.slice(bare.indexOf('#') + 1)
}

/** The longest beginning that stands for whole bytes, whatever its spare bits. */
const clipped = (letters: string) => letters.slice(0, letters.length - (letters.length % 4))

function unseal(sealed: Uint8Array): Uint8Array | 'truncated' | 'damaged' {
  const length = readVarint(sealed, 0)
  if (!length) return sealed.length < 5 ? 'truncated' : 'damaged'
  const start = length.next + CHECKSUM_BYTES
  if (sealed.length < start + length.value) return 'truncated'
  const payload = sealed.subarray(start)
  let checksum = 0
  for (let i = 0; i < CHECKSUM_BYTES; i++) checksum += sealed[length.next + i]! * 2 ** (8 * i)
  return crc32(payload) === checksum ? payload : 'damaged'
}
