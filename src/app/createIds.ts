const LETTERS = '0123456789abcdefghijklmnopqrstuv'
/** 50 bits: among ten thousand page loads on one shelf, two share a prefix with a chance of about 4 in 10⁸. */
const PREFIX = 10

/**
 * Makes ids no other page makes: ten letters drawn for this page, then a number that counts up.
 * Most ids of a ride thus share their beginning, which costs a link next to nothing, where ids
 * drawn one by one would double it.
 *
 * @param random fills an array with random bytes, as `crypto.getRandomValues` does (which, unlike
 *   `crypto.randomUUID`, is there on plain http too)
 */
export function createIds(random: (bytes: Uint8Array<ArrayBuffer>) => Uint8Array<ArrayBuffer>): () => string {
  const prefix = [...random(new Uint8Array(PREFIX))].map((byte) => LETTERS[byte % LETTERS.length]).join('')
  let made = 0
  return () => `${prefix}-${(made++).toString(36)}`
}
