import { memo, useId } from 'react'
import { sayFit } from '#engine/cadence/cadenceWindow.ts'
import { constantsOf } from '#engine/constants.ts'
import { type BeatGrid, type Block, type Ride, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import './StrikesField.css'

interface StrikesFieldProps {
  grid: BeatGrid
  strikes: StrikesPerBeat
  blocks: readonly Block[]
  houseRules: Ride['houseRules']
  onChange: (strikes: StrikesPerBeat) => void
}

const CHOICES = [
  { strikes: 0.5, label: '½ a beat' },
  { strikes: 1, label: '1 a beat' },
  { strikes: 2, label: '2 a beat' },
] as const

/** Strikes per beat, with the cadence each gives and how it suits the section's blocks. */
export const StrikesField = memo(function StrikesField({ grid, strikes, blocks, houseRules, onChange }: StrikesFieldProps) {
  const name = useId()
  const rules = constantsOf({ houseRules })
  return (
    <fieldset className="panel-strikes">
      <legend className="panel-label">strikes</legend>
      <div>
        {CHOICES.map((choice) => {
          const rpm = (tempoOf(grid) * choice.strikes) / 2
          return (
            <label key={choice.strikes}>
              <input type="radio" name={name} checked={strikes === choice.strikes} onChange={() => onChange(choice.strikes)} />
              <span>{choice.label}</span>
              <b>{Math.round(rpm)} rpm</b>
              <span className="panel-quiet">{sayFit(rpm, blocks, rules)}</span>
            </label>
          )
        })}
        <label>
          <input type="radio" name={name} checked={strikes === null} onChange={() => onChange(null)} />
          <span>off the beat</span>
          <span className="panel-quiet">cadence is stated</span>
        </label>
      </div>
    </fieldset>
  )
})
