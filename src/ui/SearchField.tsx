import { words } from '#words/words.ts'

interface Props {
  value: string
  /** What is looked in: "title or artist". */
  placeholder: string
  onChange: (value: string) => void
}

/** Words by which a list is narrowed down while they are typed. */
export function SearchField({ value, placeholder, onChange }: Props) {
  return (
    <label className="ui-field">
      <span className="ui-field-label">{words.app.find}</span>
      <input type="search" value={value} placeholder={placeholder} onChange={(event) => onChange(event.currentTarget.value)} />
    </label>
  )
}
