import { QuantityRow, type QuantityRowProps } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { type Parsed, parsed } from '#units/parsed.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

interface MixedQuantityRowProps<T> extends Omit<QuantityRowProps<T>, 'value' | 'onChange'> {
  /** Null where several things do not share it. */
  value: T | null
  onChange: (value: T) => void
}

/** A quantity of several things: an empty field that says “mixed” where they differ, and stays so while nothing is typed. */
export function MixedQuantityRow<T>({ value, format, parse, step, unit, placeholder, onChange, ...row }: MixedQuantityRowProps<T>) {
  return (
    <QuantityRow<T | null>
      {...row}
      value={value}
      unit={value === null ? undefined : unit}
      placeholder={value === null ? words.panels.mixed : placeholder}
      format={(held) => (held === null ? '' : format(held))}
      parse={(text): Parsed<T | null, Refusal> => (text.trim() === '' && value === null ? parsed(null) : parse(text))}
      step={step && ((held, direction, large) => (held === null ? held : step(held, direction, large)))}
      onChange={(next) => {
        if (next !== null) onChange(next)
      }}
    />
  )
}
