import { Field } from '#ui/Field.tsx'
import { words } from '#words/words.ts'

interface TextRowProps {
  label: string
  value: string | undefined
  /** Takes the trimmed text; undefined when the field was emptied. */
  onChange: (text: string | undefined) => void
  /** Said when the field is left empty; an empty text is taken where it is absent. */
  required?: string
  placeholder?: string
  hint?: string
  rows?: number
  /** Longest text kept, in characters. */
  longest?: number
}

/** Words in a row of the panel. */
export function TextRow({ label, value, onChange, required, placeholder, hint, rows, longest = 400 }: TextRowProps) {
  const commit = (typed: string) => {
    const text = typed.trim()
    if (text === (value ?? '').trim()) return null
    if (text === '' && required !== undefined) return required
    if (text.length > longest) return words.fields.tooLong({ most: longest, length: text.length })
    onChange(text === '' ? undefined : text)
    return null
  }
  return <Field label={label} value={value ?? ''} onCommit={commit} placeholder={placeholder} hint={hint} rows={rows} />
}
