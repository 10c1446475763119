import { useId, useState } from 'react'
import { Segmented } from '#ui/Segmented.tsx'
import { words } from '#words/words.ts'

const USUAL = ['20', '30', '45', '60'] as const
const OTHER = 'other'
/** Minutes a class may have. */
const SHORTEST = 1
const LONGEST = 240

interface Props {
  /** Null while the field holds no length. */
  minutes: number | null
  onChange: (minutes: number | null) => void
}

/** The length of the class: the usual four, or any other in minutes. */
export function SlotField({ minutes, onChange }: Props) {
  const [other, setOther] = useState<string | null>(null)
  const id = useId()
  const choose = (value: string) => {
    setOther(value === OTHER ? String(minutes ?? '') : null)
    if (value !== OTHER) onChange(Number(value))
  }
  return (
    <div className="start-slot" data-other={other !== null}>
      <Segmented
        label={words.start.classLength}
        value={other === null ? String(minutes) : OTHER}
        choices={[...USUAL, OTHER].map((value) => ({ value, label: value === OTHER ? words.start.other : value }))}
        onChange={choose}
      />
      {other !== null && (
        <div className="ui-field start-slot-other">
          <label className="ui-field-label" htmlFor={id}>
            {words.start.otherLength}
          </label>
          <div className="ui-field-line">
            <input
              id={id}
              type="text"
              inputMode="numeric"
              autoComplete="off"
              value={other}
              aria-invalid={minutes === null}
              aria-describedby={`${id}-under`}
              onChange={(event) => {
                setOther(event.currentTarget.value)
                onChange(readMinutes(event.currentTarget.value))
              }}
            />
            <span className="ui-field-unit">{words.start.minutesUnit}</span>
          </div>
          <p id={`${id}-under`} className="ui-field-under" data-problem={minutes === null} role="status">
            {minutes === null && words.start.minutesProblem({ least: SHORTEST, most: LONGEST })}
          </p>
        </div>
      )}
    </div>
  )
}

/** Reads whole minutes: "50", "50 min"; null when it is none. */
function readMinutes(text: string): number | null {
  const [, digits] = /^\s*(\d{1,4})\s*(?:min|minutes|minuten|m)?\s*$/i.exec(text) ?? []
  const value = Number(digits)
  return digits !== undefined && value >= SHORTEST && value <= LONGEST ? value : null
}
