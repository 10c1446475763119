import { parseDecimal } from './parseDecimal.ts'
import { type Parsed, parsed, refused } from './parsed.ts'
import type { Quantity } from './problem.ts'

export interface NumberRules {
  /** What the number is, for what is said of it. */
  of: Quantity
  min: number
  max: number
  /** Most decimal places kept; more are refused, not rounded away. Whole numbers unless given. */
  decimals?: number
  /** The short forms of the unit that may follow the number, longest first. */
  suffixes?: readonly string[]
}

/** A typed number within its bounds: "128", "127.6", "127,6", "128 bpm". */
export function parseNumber(text: string, { of, min, max, decimals = 0, suffixes = [] }: NumberRules): Parsed<number> {
  const value = parseDecimal(withoutSuffix(text, suffixes))
  if (value === null) return refused({ kind: 'notNumber', of })
  if (value < min || value > max) return refused({ kind: 'outside', of, min, max })
  if (Number(value.toFixed(decimals)) === value) return parsed(value)
  return refused(decimals === 0 ? { kind: 'notWhole', of } : { kind: 'tooFine', of, decimals })
}

function withoutSuffix(text: string, suffixes: readonly string[]): string {
  const trimmed = text.trim().toLowerCase()
  const suffix = suffixes.find((candidate) => trimmed.endsWith(candidate))
  return suffix === undefined ? trimmed : trimmed.slice(0, -suffix.length)
}
