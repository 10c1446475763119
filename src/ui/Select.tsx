import { useId } from 'react'
import './Field.css'

/** One of a short list of values, with the words it is shown by. */
export interface Choice<V extends string> {
  value: V
  label: string
  disabled?: boolean
}

export interface SelectProps<V extends string> {
  label: string
  value: V
  choices: readonly Choice<V>[]
  onChange: (value: V) => void
  hideLabel?: boolean
  disabled?: boolean
  className?: string
}

/** The browser's own list box with our label. */
export function Select<V extends string>({ label, value, choices, onChange, hideLabel, disabled, className }: SelectProps<V>) {
  const id = useId()
  return (
    <div className={`ui-field ${className ?? ''}`}>
      <label htmlFor={id} className={hideLabel ? 'ui-hidden' : 'ui-field-label'}>
        {label}
      </label>
      <select id={id} value={value} disabled={disabled} onChange={(event) => onChange(event.currentTarget.value as V)}>
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value} disabled={choice.disabled}>
            {choice.label}
          </option>
        ))}
      </select>
    </div>
  )
}
