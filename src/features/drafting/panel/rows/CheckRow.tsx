import { useId } from 'react'

interface CheckRowProps {
  label: string
  /** What a tick means, beside the box. */
  says: string
  checked: boolean
  /** Some of several things say yes and some no; `checked` is then false. */
  mixed?: boolean
  onChange: (checked: boolean) => void
}

/** Yes or no in a row of the panel, with the words that say what yes means. */
export function CheckRow({ label, says, checked, mixed = false, onChange }: CheckRowProps) {
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
          ref={(box) => {
            if (box) box.indeterminate = mixed
          }}
          aria-labelledby={`${id} ${id}-says`}
          onChange={(event) => onChange(event.currentTarget.checked)}
        />
        <span id={`${id}-says`}>{says}</span>
      </label>
    </div>
  )
}
