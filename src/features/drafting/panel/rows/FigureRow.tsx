import { Figure, type FigureName } from '#ui/figures/Figure.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import type { Choice } from '#ui/Select.tsx'
import './FigureRow.css'

interface FigureRowProps<V extends string> {
  label: string
  /** Null where several things do not share it. */
  value: V | null
  choices: readonly (Choice<V> & { figure: FigureName })[]
  onChange: (value: V) => void
}

/** One of a few values that have a figure; the word stands beside the chosen one. */
export function FigureRow<V extends string>({ label, value, choices, onChange }: FigureRowProps<V>) {
  return (
    <Segmented<V>
      className="panel-figures"
      label={label}
      value={value ?? ('' as V)}
      choices={choices.map((choice) => ({ ...choice, figure: <Figure name={choice.figure} /> }))}
      onChange={onChange}
    />
  )
}
