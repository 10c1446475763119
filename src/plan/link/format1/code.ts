import type { BitReader, BitWriter } from './bits.ts'

/**
 * How the whole numbers of a list are written in bits. All are multiples of 2^shift and
 * written without those zeros; of what is left the lowest `low` bits are written as they
 * are, and the rest either as so many ones and a zero (Rice's code, for lists of like
 * values) or in Elias's gamma code (for lists with a few large ones).
 */
interface Code {
  rice: boolean
  shift: number
  low: number
}

/** A code is itself written as its kind, its shift and the place of its `low` in this list. */
const LOWS = [0, 1, 2, 3, 4, 6, 8, 16]
const PLACE_BITS = 3
const SHIFT_BITS = 2
const SHIFTS = [3, 2, 1, 0]

/** The code that writes the values shortest; the first of equals. */
export function bestCode(values: readonly number[]): Code {
  const shift = SHIFTS.find((by) => values.every((value) => value % 2 ** by === 0))!
  const codes = LOWS.flatMap((low) => [true, false].map((rice): Code => ({ rice, shift, low })))
  const lengths = codes.map((code) => values.reduce((sum, value) => sum + lengthOf(value, code), 0))
  return codes[lengths.indexOf(Math.min(...lengths))]!
}

const highOf = (value: number, { shift, low }: Code) => Math.floor(value / 2 ** (shift + low))

/** The place of a number's highest bit. Close under a high power of two the logarithm rounds up to that power. */
function widthOf(value: number): number {
  const width = Math.floor(Math.log2(value))
  return 2 ** width > value ? width - 1 : width
}

function lengthOf(value: number, code: Code): number {
  const high = highOf(value, code)
  return code.low + 1 + (code.rice ? high : 2 * widthOf(high + 1))
}

export function writeCode(to: BitWriter, { rice, shift, low }: Code): void {
  to.bits(rice ? 1 : 0, 1)
  to.bits(shift, SHIFT_BITS)
  to.bits(LOWS.indexOf(low), PLACE_BITS)
}

export const readCode = (from: BitReader): Code => ({
  rice: from.bits(1) === 1,
  shift: from.bits(SHIFT_BITS),
  low: LOWS[from.bits(PLACE_BITS)]!,
})

export function writeNumber(to: BitWriter, value: number, code: Code): void {
  const high = highOf(value, code)
  if (code.rice) {
    for (let left = high; left > 0; left--) to.bits(1, 1)
    to.bits(0, 1)
  } else {
    const width = widthOf(high + 1)
    to.bits(0, width)
    to.bits(high + 1, width + 1)
  }
  to.bits(Math.floor(value / 2 ** code.shift), code.low)
}

export function readNumber(from: BitReader, { rice, shift, low }: Code): number {
  const high = rice ? readOnes(from) : readGamma(from)
  return (high * 2 ** low + from.bits(low)) * 2 ** shift
}

function readOnes(from: BitReader): number {
  let ones = 0
  while (from.bits(1) === 1) ones += 1
  return ones
}

function readGamma(from: BitReader): number {
  let width = 0
  while (from.bits(1) === 0) width += 1
  return 2 ** width + from.bits(width) - 1
}

/** For numbers on their own, of no known size: low ones short. */
export const SMALL: Code = { rice: false, shift: 0, low: 1 }
