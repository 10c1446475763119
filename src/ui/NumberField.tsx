import type { KeyboardEvent } from 'react'
import type { Refusal } from '#words/said.ts'
import { Field, type FieldProps } from './Field.tsx'
import { STEPS_DOWN, STEPS_UP } from './fieldKeys.ts'

/** A parsed quantity, or why the text is none. */
type Parsed<T> = { ok: true; value: T } | { ok: false; problem: Refusal }

interface NumberFieldProps<T> extends Omit<FieldProps, 'value' | 'onCommit' | 'onKeyDown' | 'rows'> {
  value: T
  /** How the value is written in the field: "1½", "3:45". */
  format: (value: T) => string
  /** Reads every written form the trade uses ("1½", "1 1/2", "1.5", "3:45"). */
  parse: (text: string) => Parsed<T>
  /** Takes the value, or returns why this ride cannot. */
  onCommit: (value: T) => Refusal | null | undefined
  /** The next value up (1) or down (−1), by a small step or, with Shift, a large one. Absent: arrows do nothing. */
  step?: (value: T, direction: 1 | -1, large: boolean) => T
}

/** A field for a quantity. Arrow up and down step the committed value where `step` is given. */
export function NumberField<T>({ value, format, parse, onCommit, step, ...field }: NumberFieldProps<T>) {
  const commit = (text: string) => {
    const parsed = parse(text)
    return parsed.ok ? (onCommit(parsed.value) ?? null) : parsed.problem
  }
  const stepByArrow = (event: KeyboardEvent) => {
    const direction = event.key === STEPS_UP ? 1 : event.key === STEPS_DOWN ? -1 : null
    if (direction === null || step === undefined || event.altKey || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    onCommit(step(value, direction, event.shiftKey))
  }
  return <Field inputMode="text" marksAll {...field} value={format(value)} onCommit={commit} onKeyDown={stepByArrow} />
}
