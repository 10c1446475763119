import { fromBase64url, toBase64url } from '#plan/link/base64url.ts'

const DIGITS = 16

/** Revisions of 16 hexadecimal digits as their bytes one after the other, in base64url. */
export const packRevisions = (revisions: readonly string[]): string =>
  toBase64url(Uint8Array.from(revisions.join('').match(/../g) ?? [], (pair) => Number.parseInt(pair, 16)))

/** The revisions of such a text, as far as it holds whole ones; none where it is no such text. */
export function unpackRevisions(text: unknown): string[] {
  const bytes = typeof text === 'string' ? fromBase64url(text) : undefined
  const digits = Array.from(bytes ?? [], (byte) => byte.toString(16).padStart(2, '0')).join('')
  return digits.match(new RegExp(`.{${DIGITS}}`, 'g')) ?? []
}
