import { useState } from 'react'
import type { Rider, ThreeMinuteTest } from '#plan/riderModel.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { Select } from '#ui/Select.tsx'
import type { Parsed } from '#units/parsed.ts'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { parseEndWatts, parsePeak, parseTrialWatts } from './fields.ts'

interface Props {
  rider: Rider
  onChange: (rider: Rider) => void
}

const overs = () => [
  { value: '180' as const, label: words.riders.wholeTest },
  { value: '150' as const, label: words.riders.firstPart },
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
      format={(value) => (value === undefined ? '' : number(value, 1))}
      parse={(text) => {
        if (text.trim() !== '') return parse(text)
        return kept && key !== 'peakSecond' ? { ok: false, problem: words.riders.needed } : { ok: true, value: undefined }
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
        label={words.riders.averageOver}
        value={held.over === 150 ? '150' : '180'}
        choices={overs()}
        onChange={(over) => put({ over: over === '150' ? 150 : 180 })}
      />
      {field('watts', words.riders.averageWatts, words.riders.watts, words.riders.averageHint, parseTrialWatts)}
      {field('endWatts', words.riders.lastAverage, words.riders.watts, words.riders.lastAverageHint, parseEndWatts)}
      {field('peakSecond', words.riders.peakSecond, words.riders.seconds, words.riders.peakSecondHint, parsePeak)}
      {kept && (
        <Button
          tone="quiet"
          onClick={() => {
            const { threeMinuteTest: _before, ...others } = rider
            setDraft({ over: 180 })
            onChange(others)
          }}
        >
          {words.riders.removeTest}
        </Button>
      )}
    </div>
  )
}
