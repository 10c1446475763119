import { NumberField } from '#ui/NumberField.tsx'
import type { Parsed } from '#units/parsed.ts'

export interface QuantityRowProps<T> {
  label: string
  value: T
  format: (value: T) => string
  parse: (text: string) => Parsed<T>
  onChange: (value: T) => void
  step?: (value: T, direction: 1 | -1, large: boolean) => T
  unit?: string
  hint?: string
  placeholder?: string
}

/** A quantity in a row of the panel: typed in any common form, or stepped with the arrow keys. */
export function QuantityRow<T>({ onChange, ...row }: QuantityRowProps<T>) {
  const commit = (value: T) => {
    onChange(value)
    return null
  }
  return <NumberField {...row} onCommit={commit} />
}
