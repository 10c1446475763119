import { memo } from 'react'
import { type CadenceKind, cadenceKindOf, cadenceOfKind } from '#features/drafting/panel/block/cadenceKind.ts'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { patched } from '#plan/edits.ts'
import { type Block, type Song, tempoOf } from '#plan/model.ts'
import type { Choice } from '#ui/Select.tsx'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'

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
export const readRpm = (text: string) => parseNumber(text, RPM)
export const stepRpm = (rpm: number, direction: 1 | -1, large: boolean) =>
  Math.min(RPM.max, Math.max(RPM.min, rpm + direction * (large ? 5 : 1)))

/** How fast the legs go: by the song, by strokes of the block's own, set off the beat, or not at all. */
export const CadenceFields = memo(function CadenceFields({ block, song, rpmNow, onChange }: CadenceFieldsProps) {
  const kind = cadenceKindOf(block)
  const choices = cadenceChoices(song)
  const { cadence } = block
  const stated = cadence === undefined || cadence === 'legsStill' ? null : cadence
  return (
    <>
      <SelectRow
        label={words.panelsBlock.cadence}
        value={kind}
        choices={
          choices.some((choice) => choice.value === kind)
            ? choices
            : [...choices, { value: kind, label: words.panelsBlock.beatWithoutTempo }]
        }
        onChange={(next) => onChange(cadenceOfKind(next, song, rpmNow()))}
      />
      {stated && (
        <>
          <QuantityRow
            label={words.panelsBlock.rpm}
            value={stated.rpm}
            format={(value) => number(value, 1)}
            parse={readRpm}
            step={stepRpm}
            onChange={(value) => onChange({ cadence: { ...stated, rpm: value } })}
          />
          <OptionalQuantityRow
            label={words.panelsBlock.rampTo}
            value={stated.rampTo}
            unit={words.panelsBlock.rpm}
            placeholder={words.panelsBlock.steady}
            format={(value) => number(value, 1)}
            parse={readRpm}
            step={stepRpm}
            onChange={(rampTo) => onChange({ cadence: patched(stated, { rampTo }) })}
          />
        </>
      )}
    </>
  )
})

export function cadenceChoices(song: Song | null | undefined): Choice<CadenceKind>[] {
  const grid = song?.grid
  if (!grid) {
    return [
      { value: 'song', label: words.panelsBlock.notSet },
      { value: 'stated', label: words.panelsBlock.cadenceSet },
      { value: 'still', label: words.panelsBlock.wheelStopped },
    ]
  }
  const at = (strikes: number) => ({ rpm: words.measures.rpm((tempoOf(grid) * strikes) / 2) })
  const strikes = song?.strikesPerBeat ?? null
  return [
    { value: 'song', label: strikes === null ? words.panelsBlock.offBeatNotSet : words.panelsBlock.withSong(at(strikes)) },
    { value: 'half', label: words.panelsBlock.halfTime(at(0.5)) },
    { value: 'one', label: words.panelsBlock.onBeat(at(1)) },
    { value: 'two', label: words.panelsBlock.doubleTime(at(2)) },
    { value: 'stated', label: words.panelsBlock.offBeatSet },
    { value: 'still', label: words.panelsBlock.wheelStopped },
  ]
}
