import { useState } from 'react'
import { FEEL_LADDER } from '#engine/demand/feelLadder.ts'
import type { Bike } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { parseBikeSetting, sayAt } from './fields.ts'

interface Props {
  bike: Bike
  onChange: (bike: Bike) => void
}

/** What a setting feels like, by the words riders are given; they translate a ride to bikes that have no watts. */
export function FeelAnchors({ bike, onChange }: Props) {
  const anchors = bike.feelAnchors ?? []
  const put = (feelAnchors: NonNullable<Bike['feelAnchors']>) => {
    const { feelAnchors: _before, ...rest } = bike
    onChange(feelAnchors.length === 0 ? rest : { ...rest, feelAnchors: feelAnchors.toSorted((a, b) => a.setting - b.setting) })
  }
  const missing = FEEL_LADDER.filter(({ feel }) => !anchors.some((anchor) => anchor.feel === feel))
  return (
    <section className="setup-part" aria-label="what settings feel like">
      <h2>what settings feel like</h2>
      <p className="setup-quiet">A turn means different things on each bike; a feel does not. Calibrating by feel fills these in.</p>
      {anchors.length > 0 && (
        <table className="setup-table">
          <thead>
            <tr>
              <th scope="col">feel</th>
              <th scope="col">{bike.unit}s</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {anchors.map((anchor, index) => (
              <tr key={anchor.feel}>
                <th scope="row">{anchor.feel}</th>
                <td>
                  <NumberField
                    label={`setting of ${anchor.feel}`}
                    hideLabel
                    value={anchor.setting}
                    format={(setting) => sayAt(setting, bike)}
                    parse={(text) => parseBikeSetting(text, bike)}
                    onCommit={(setting) => {
                      if (setting !== anchor.setting) put(anchors.with(index, { ...anchor, setting }))
                      return null
                    }}
                  />
                </td>
                <td>
                  <Button tone="quiet" aria-label={`remove ${anchor.feel}`} onClick={() => put(anchors.toSpliced(index, 1))}>
                    remove
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {missing.length > 0 && <NewAnchor bike={bike} feels={missing.map(({ feel }) => feel)} onAdd={(added) => put([...anchors, added])} />}
    </section>
  )
}

interface NewProps {
  bike: Bike
  feels: readonly string[]
  onAdd: (anchor: { feel: string; setting: number }) => void
}

function NewAnchor({ bike, feels, onAdd }: NewProps) {
  const [chosen, setChosen] = useState(feels[0]!)
  const feel = feels.includes(chosen) ? chosen : feels[0]!
  return (
    <div className="setup-add">
      <div className="ui-field">
        <select aria-label="feel to add" value={feel} onChange={(event) => setChosen(event.currentTarget.value)}>
          {feels.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
      </div>
      <NumberField<number | null>
        label={`where ${feel} is`}
        hideLabel
        placeholder={sayAt(bike.base, bike)}
        unit={`${bike.unit}s`}
        value={null}
        format={() => ''}
        parse={(text) => (text.trim() === '' ? { ok: true, value: null } : parseBikeSetting(text, bike))}
        onCommit={(setting) => {
          if (setting !== null) onAdd({ feel, setting })
          return null
        }}
      />
    </div>
  )
}
