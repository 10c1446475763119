import { useState } from 'react'
import type { Rider, ThreeMinuteTest } from '#plan/riderModel.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { type Choice, Select } from '#ui/Select.tsx'
import { formatNumber } from '#units/formatNumber.ts'
import type { Parsed } from '#units/parsed.ts'
import { parseEndWatts, parsePeak, parseTrialWatts } from './fields.ts'

interface Props {
  rider: Rider
  onChange: (rider: Rider) => void
}

const OVERS: readonly Choice<'180' | '150'>[] = [
  { value: '180', label: 'all three minutes' },
  { value: '150', label: 'the first 2½ minutes' },
]

/** What a console shows of three minutes all out; kept with the rider once its two powers are there. */
export function ThreeMinutes({ rider, onChange }: Props) {
  const kept = rider.threeMinuteTest
  const [draft, setDraft] = useState<Partial<ThreeMinuteTest>>(kept ?? { over: 180 })
  const held = { ...draft, ...kept }
  const put = (change: Partial<ThreeMinuteTest>) => {
    const { over = 180, watts, endWatts, peakSecond } = { ...held, ...change }
    setDraft({ over, watts, endWatts, peakSecond })
    if (watts === undefined || endWatts === undefined) return
    const test: ThreeMinuteTest = { over, watts, endWatts, ...(peakSecond !== undefined && { peakSecond }) }
    onChange({ ...rider, threeMinuteTest: test })
  }
  const field = (
    key: 'watts' | 'endWatts' | 'peakSecond',
    label: string,
    unit: string,
    hint: string,
    parse: (text: string) => Parsed<number>,
  ) => (
    <NumberField<number | undefined>
      label={label}
      unit={unit}
      hint={hint}
      value={held[key]}
      format={(value) => (value === undefined ? '' : formatNumber(value, 1))}
      parse={(text) => {
        if (text.trim() !== '') return parse(text)
        return kept && key !== 'peakSecond'
          ? { ok: false, problem: 'The test needs it; remove the test to leave it out.' }
          : { ok: true, value: undefined }
      }}
      onCommit={(value) => {
        if (value !== held[key]) put({ [key]: value })
        return null
      }}
    />
  )
  return (
    <div className="rider-test-three">
      <Select
        label="mean watts are of"
        value={held.over === 150 ? '150' : '180'}
        choices={OVERS}
        onChange={(over) => put({ over: over === '150' ? 150 : 180 })}
      />
      {field('watts', 'mean watts', 'watts', 'All out from the first second, with no pacing and no clock in sight.', parseTrialWatts)}
      {field('endWatts', 'mean of the last 30 s', 'watts', 'What is left at the end is critical power.', parseEndWatts)}
      {field('peakSecond', 'second of the peak', 's', 'If the console shows it; all out, it is in the first ten.', parsePeak)}
      {kept && (
        <Button
          tone="quiet"
          onClick={() => {
            const { threeMinuteTest: _before, ...others } = rider
            setDraft({ over: 180 })
            onChange(others)
          }}
        >
          remove this test
        </Button>
      )}
    </div>
  )
}
