import { memo, useId } from 'react'
import { sayFit } from '#engine/cadence/cadenceWindow.ts'
import { constantsOf } from '#engine/constants.ts'
import { type BeatGrid, type Block, type Ride, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { tell, words } from '#words/words.ts'
import './StrikesField.css'

interface StrikesFieldProps {
  grid: BeatGrid
  strikes: StrikesPerBeat
  blocks: readonly Block[]
  houseRules: Ride['houseRules']
  onChange: (strikes: StrikesPerBeat) => void
}

const strokeChoices = () =>
  [
    { strikes: 0.5, label: words.panelsSong.halfTime },
    { strikes: 1, label: words.panelsSong.onBeat },
    { strikes: 2, label: words.panelsSong.doubleTime },
  ] as const

/** Pedal strokes per beat, with the cadence each gives and how it suits the section's blocks. */
export const StrikesField = memo(function StrikesField({ grid, strikes, blocks, houseRules, onChange }: StrikesFieldProps) {
  const name = useId()
  const rules = constantsOf({ houseRules })
  return (
    <fieldset className="panel-strikes">
      <legend className="panel-label">{words.panelsSong.strokes}</legend>
      <div>
        {strokeChoices().map((choice) => {
          const rpm = (tempoOf(grid) * choice.strikes) / 2
          return (
            <label key={choice.strikes}>
              <input type="radio" name={name} checked={strikes === choice.strikes} onChange={() => onChange(choice.strikes)} />
              <span>{choice.label}</span>
              <b>{words.measures.rpm(rpm)}</b>
              <span className="panel-quiet">{tell(sayFit(rpm, blocks, rules) ?? '')}</span>
            </label>
          )
        })}
        <label>
          <input type="radio" name={name} checked={strikes === null} onChange={() => onChange(null)} />
          <span>{words.panelsSong.offBeat}</span>
          <span className="panel-quiet">{words.panelsSong.cadenceSet}</span>
        </label>
      </div>
    </fieldset>
  )
})
