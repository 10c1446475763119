import type { Shape } from './shapes.ts'

/** A revision is 64 bits, written as four numbers, since nothing about it can be guessed. */
const PARTS = [0, 4, 8, 12]
const DIGITS = 4

/** A content revision: sixteen hexadecimal digits. */
export const revisionShape = (column: number): Shape<string> => ({
  write(revision, to) {
    for (const at of PARTS) to.put(column, Number.parseInt(revision.slice(at, at + DIGITS), 16))
  },
  read: (from) => PARTS.map(() => from.take(column).toString(16).padStart(DIGITS, '0')).join(''),
})
