import { Select, type SelectProps } from '#ui/Select.tsx'
import { words } from '#words/words.ts'

/** One of a few words in a row of the panel. A value that several things do not share is shown as "mixed". */
export function SelectRow<V extends string>({ value, choices, onChange, ...row }: MixedProps<V>) {
  const mixed = value === null
  return (
    <Select<V | typeof MIXED>
      {...row}
      value={mixed ? MIXED : value}
      choices={mixed ? [{ value: MIXED, label: words.panels.mixed, disabled: true }, ...choices] : choices}
      onChange={(next) => next !== MIXED && onChange(next)}
    />
  )
}

const MIXED = ''
type MixedProps<V extends string> = Omit<SelectProps<V>, 'value'> & { value: V | null }
