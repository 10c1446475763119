import { NumberField } from '#ui/NumberField.tsx'
import type { Parsed } from '#units/parsed.ts'
import type { Refusal } from '#words/said.ts'

interface Props {
  label: string
  value: number | undefined
  unit?: string
  format: (value: number) => string
  parse: (text: string) => Parsed<number, Refusal>
  /** Undefined when the field was emptied. */
  onRead: (value: number | undefined) => void
  onFocus: () => void
}

/** One thing found on the bike; left empty, it is skipped. */
export function Reading({ label, value, unit, format, parse, onRead, onFocus }: Props) {
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: notices where the focus is; there is nothing to press
    <div data-reading onFocus={onFocus}>
      <NumberField<number | undefined>
        label={label}
        hideLabel
        unit={unit}
        value={value}
        format={(held) => (held === undefined ? '' : format(held))}
        parse={(text) => (text.trim() === '' ? { ok: true, value: undefined } : parse(text))}
        onCommit={(next) => {
          if (next !== value) onRead(next)
          return null
        }}
      />
    </div>
  )
}
