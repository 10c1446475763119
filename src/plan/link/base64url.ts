const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'
const VALUES = new Map([...ALPHABET].map((letter, value) => [letter, value]))

/** Bytes as base64url without padding (RFC 4648, section 5): text that a web address carries unchanged. */
export function toBase64url(bytes: Uint8Array): string {
  let text = ''
  for (let i = 0; i < bytes.length; i += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(i, i + 3)
    const word = (a << 16) | (b << 8) | c
    const letters = [word >> 18, (word >> 12) & 63, (word >> 6) & 63, word & 63].map((value) => ALPHABET[value])
    text += letters.slice(0, Math.min(4, bytes.length - i + 1)).join('')
  }
  return text
}

/**
 * Bytes of unpadded base64url text.
 * @returns undefined where the text is none: another letter, a length no bytes give, or
 *   spare bits that are not zero (so every byte string has exactly one text).
 */
export function fromBase64url(text: string): Uint8Array | undefined {
  if (text.length % 4 === 1) return undefined
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4))
  let held = 0
  let bits = 0
  let at = 0
  for (const letter of text) {
    const value = VALUES.get(letter)
    if (value === undefined) return undefined
    held = (held << 6) | value
    bits += 6
    if (bits >= 8) {
      bits -= 8
      bytes[at++] = held >> bits
      held &= (1 << bits) - 1
    }
  }
  return held === 0 ? bytes : undefined
}
