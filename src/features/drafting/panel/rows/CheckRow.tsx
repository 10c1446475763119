import { useId } from 'react'

interface CheckRowProps {
  label: string
  /** What a tick means, beside the box. */
  says: string
  checked: boolean
  onChange: (checked: boolean) => void
}

/** Yes or no in a row of the panel, with the words that say what yes means. */
export function CheckRow({ label, says, checked, onChange }: CheckRowProps) {
  const id = useId()
  return (
    <div className="panel-row">
      <span className="panel-label" id={id}>
        {label}
      </span>
      <label className="panel-check">
        <input
          type="checkbox"
          checked={checked}
          aria-labelledby={`${id} ${id}-says`}
          onChange={(event) => onChange(event.currentTarget.checked)}
        />
        <span id={`${id}-says`}>{says}</span>
      </label>
    </div>
  )
}
