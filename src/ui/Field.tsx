import { type KeyboardEvent, type MouseEvent, type PointerEvent, type ReactNode, useId, useRef } from 'react'
import { tellRefusal, words } from '#words/words.ts'
import { type Taken, useDraftText } from './useDraftText.ts'
import './Field.css'

export interface FieldProps {
  label: string
  /** The committed text. Give the field a `key` when it changes what it edits. */
  value: string
  /** Takes the text, or returns what is wrong with it. */
  onCommit: (text: string) => Taken
  /** Keeps the label for screen readers only. */
  hideLabel?: boolean
  /** Small words after the input: a unit. */
  unit?: string
  /** One line under the input while there is no problem. */
  hint?: ReactNode
  placeholder?: string
  /** Rows of a text of several lines; Enter then makes a new line. */
  rows?: number
  inputMode?: 'text' | 'decimal' | 'numeric'
  /** A press that enters the field marks all of it, so that what is typed takes its place; a second press sets the caret. */
  marksAll?: boolean
  /** Keys the owner handles itself (stepping by arrow); called before the field's own keys. */
  onKeyDown?: (event: KeyboardEvent<HTMLInputElement | HTMLTextAreaElement>) => void
  disabled?: boolean
  className?: string
}

/**
 * Label, input, and under it the sentence that says what is wrong. Commits on Enter and on leaving
 * the field; refused text stays in it; Escape restores the committed text.
 */
export function Field({
  label,
  value,
  onCommit,
  hideLabel,
  unit,
  hint,
  placeholder,
  rows,
  inputMode,
  marksAll,
  onKeyDown,
  disabled,
  className,
}: FieldProps) {
  const id = useId()
  const { inputProps, problem, isBack, restore } = useDraftText(label, value, onCommit, rows !== undefined)
  const entered = useRef(false)
  const marking = {
    onPointerDown: ({ currentTarget }: PointerEvent<HTMLInputElement>) => {
      entered.current = document.activeElement !== currentTarget
    },
    onClick: ({ currentTarget }: MouseEvent<HTMLInputElement>) => {
      // Whoever drags over a part of it wants that part.
      if (entered.current && currentTarget.selectionStart === currentTarget.selectionEnd) currentTarget.select()
      entered.current = false
    },
  }
  const under = problem === null ? (isBack ? words.fields.back : hint) : tellRefusal(problem)
  const shared = {
    ...inputProps,
    id,
    placeholder,
    disabled,
    inputMode,
    autoComplete: 'off',
    'aria-invalid': problem !== null,
    'aria-describedby': under ? `${id}-under` : undefined,
    onKeyDown: (event: KeyboardEvent<HTMLInputElement | HTMLTextAreaElement>) => {
      onKeyDown?.(event)
      // A step by arrow goes from the committed value; what was typed over it gives way.
      if (event.defaultPrevented && event.key.startsWith('Arrow')) restore()
      if (!event.defaultPrevented) inputProps.onKeyDown(event)
    },
  }
  return (
    <div className={`ui-field ${className ?? ''}`}>
      <label htmlFor={id} className={hideLabel ? 'ui-hidden' : 'ui-field-label'}>
        {label}
      </label>
      <div className="ui-field-line">
        {rows === undefined ? (
          <input type="text" spellCheck={false} {...shared} {...(marksAll && marking)} />
        ) : (
          <textarea rows={rows} {...shared} />
        )}
        {unit && <span className="ui-field-unit">{unit}</span>}
      </div>
      <p id={`${id}-under`} className="ui-field-under" data-problem={problem !== null} role={problem === null ? undefined : 'alert'}>
        {under}
      </p>
    </div>
  )
}
