import { formatNumber } from './formatNumber.ts'
import { parseDecimal } from './parseDecimal.ts'
import { type Parsed, parsed, refused } from './parsed.ts'

export interface NumberRules {
  /** What the number is, as the subject of the message: "The tempo". */
  subject: string
  min: number
  max: number
  /** Most decimal places kept; more are refused with a sentence, not rounded away. Whole numbers unless given. */
  decimals?: number
  /** Unit for the message ("beats a minute"), and the short forms that may follow the number. */
  unit?: string
  suffixes?: readonly string[]
  /** An example of what would be understood. */
  example: string
}

/** A typed number within its bounds: "128", "127.6", "127,6", "128 bpm". */
export function parseNumber(text: string, rules: NumberRules): Parsed<number> {
  const value = parseDecimal(withoutSuffix(text, rules.suffixes ?? []))
  if (value === null) return refused(`${rules.subject} is a number, such as ${rules.example}.`)
  const unit = rules.unit ? ` ${rules.unit}` : ''
  if (value < rules.min || value > rules.max) {
    return refused(`${rules.subject} is between ${formatNumber(rules.min)} and ${formatNumber(rules.max)}${unit}.`)
  }
  const decimals = rules.decimals ?? 0
  if (Number(value.toFixed(decimals)) !== value) {
    const places = decimals === 1 ? 'one decimal place' : `${decimals} decimal places`
    return refused(decimals === 0 ? `${rules.subject} is a whole number.` : `${rules.subject} takes at most ${places}.`)
  }
  return parsed(value)
}

function withoutSuffix(text: string, suffixes: readonly string[]): string {
  const trimmed = text.trim().toLowerCase()
  const suffix = suffixes.find((candidate) => trimmed.endsWith(candidate))
  return suffix === undefined ? trimmed : trimmed.slice(0, -suffix.length)
}
