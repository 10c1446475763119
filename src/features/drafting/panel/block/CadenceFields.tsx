import { memo } from 'react'
import { type CadenceKind, cadenceKindOf, cadenceOfKind } from '#features/drafting/panel/block/cadenceKind.ts'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { patched } from '#plan/edits.ts'
import { type Block, type Song, tempoOf } from '#plan/model.ts'
import type { Choice } from '#ui/Select.tsx'
import { formatNumber } from '#units/formatNumber.ts'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'

interface CadenceFieldsProps {
  block: Block
  song: Song | null | undefined
  /** What the legs do at the block's start, for a cadence that becomes a stated one. */
  rpmNow: () => number
  onChange: (fields: Pick<Block, 'cadence' | 'strikesPerBeat'>) => void
}

const RPM: NumberRules = {
  of: 'cadence',
  min: 20,
  max: 200,
  decimals: 1,
  suffixes: ['rpm', 'rev/min', 'u/min'],
}
const readRpm = (text: string) => parseNumber(text, RPM)
const stepRpm = (rpm: number, direction: 1 | -1, large: boolean) => Math.min(RPM.max, Math.max(RPM.min, rpm + direction * (large ? 5 : 1)))

/** How fast the legs go: by the song, by strikes of the block's own, stated off the beat, or still. */
export const CadenceFields = memo(function CadenceFields({ block, song, rpmNow, onChange }: CadenceFieldsProps) {
  const kind = cadenceKindOf(block)
  const choices = cadenceChoices(song)
  const { cadence } = block
  const stated = cadence === undefined || cadence === 'legsStill' ? null : cadence
  return (
    <>
      <SelectRow
        label="cadence"
        value={kind}
        choices={
          choices.some((choice) => choice.value === kind) ? choices : [...choices, { value: kind, label: 'strikes without a tempo' }]
        }
        onChange={(next) => onChange(cadenceOfKind(next, song, rpmNow()))}
      />
      {stated && (
        <>
          <QuantityRow
            label="rpm"
            value={stated.rpm}
            format={(value) => formatNumber(value, 1)}
            parse={readRpm}
            step={stepRpm}
            onChange={(value) => onChange({ cadence: { ...stated, rpm: value } })}
          />
          <OptionalQuantityRow
            label="ramp to"
            value={stated.rampTo}
            unit="rpm"
            placeholder="steady"
            format={(value) => formatNumber(value, 1)}
            parse={readRpm}
            step={stepRpm}
            onChange={(rampTo) => onChange({ cadence: patched(stated, { rampTo }) })}
          />
        </>
      )}
    </>
  )
})

function cadenceChoices(song: Song | null | undefined): Choice<CadenceKind>[] {
  const grid = song?.grid
  if (!grid) {
    return [
      { value: 'song', label: 'not stated' },
      { value: 'stated', label: 'stated' },
      { value: 'still', label: 'legs still' },
    ]
  }
  const at = (strikes: number) => `${Math.round((tempoOf(grid) * strikes) / 2)} rpm`
  const strikes = song?.strikesPerBeat ?? null
  return [
    { value: 'song', label: strikes === null ? 'off the beat, not stated' : `with the song, ${at(strikes)}` },
    { value: 'half', label: `½ strike a beat, ${at(0.5)}` },
    { value: 'one', label: `1 strike a beat, ${at(1)}` },
    { value: 'two', label: `2 strikes a beat, ${at(2)}` },
    { value: 'stated', label: 'off the beat, stated' },
    { value: 'still', label: 'legs still' },
  ]
}
