import { useId } from 'react'
import { type Day, isDay } from '#units/day.ts'

interface Props {
  label: string
  day: Day
  onChange: (day: Day) => void
}

/** The browser's own field for a day; what is no day yet changes nothing. */
export function DayField({ label, day, onChange }: Props) {
  const id = useId()
  return (
    <div className="ui-field">
      <label htmlFor={id} className="ui-field-label">
        {label}
      </label>
      <div className="ui-field-line">
        <input
          id={id}
          type="date"
          defaultValue={day}
          onChange={(event) => isDay(event.currentTarget.value) && onChange(event.currentTarget.value)}
        />
      </div>
    </div>
  )
}
