import { NumberField } from '#ui/NumberField.tsx'
import { type Parsed, parsed } from '#units/parsed.ts'
import type { Refusal } from '#words/said.ts'

export interface QuantityRowProps<T> {
  label: string
  value: T
  format: (value: T) => string
  parse: (text: string) => Parsed<T, Refusal>
  onChange: (value: T) => void
  step?: (value: T, direction: 1 | -1, large: boolean) => T
  unit?: string
  hint?: string
  placeholder?: string
  /** Keeps the label for screen readers only. */
  hideLabel?: boolean
}

/**
 * A quantity in a row of the panel: typed in any common form, or stepped with the arrow keys. Text that
 * says what the field said already changes nothing, even where writing the value has rounded it.
 */
export function QuantityRow<T>({ value, format, parse, onChange, ...row }: QuantityRowProps<T>) {
  const read = (text: string) => (text.trim() === format(value) ? parsed(value) : parse(text))
  const commit = (next: T) => {
    if (next !== value) onChange(next)
    return null
  }
  return <NumberField {...row} value={value} format={format} parse={read} onCommit={commit} />
}
