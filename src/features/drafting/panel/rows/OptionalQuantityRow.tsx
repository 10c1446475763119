import { QuantityRow, type QuantityRowProps } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { type Parsed, parsed } from '#units/parsed.ts'
import type { Refusal } from '#words/said.ts'

interface OptionalQuantityRowProps<T> extends Omit<QuantityRowProps<T>, 'value' | 'onChange'> {
  value: T | undefined
  /** Undefined when the field was emptied. */
  onChange: (value: T | undefined) => void
}

/** A quantity that may be left out: the empty field is its absence, and its placeholder says what then holds. */
export function OptionalQuantityRow<T>({ value, format, parse, step, unit, ...row }: OptionalQuantityRowProps<T>) {
  return (
    <QuantityRow<T | undefined>
      {...row}
      value={value}
      unit={value === undefined ? undefined : unit}
      format={(held) => (held === undefined ? '' : format(held))}
      parse={(text): Parsed<T | undefined, Refusal> => (text.trim() === '' ? parsed(undefined) : parse(text))}
      step={step && ((held, direction, large) => (held === undefined ? held : step(held, direction, large)))}
    />
  )
}
