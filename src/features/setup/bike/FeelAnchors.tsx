import { useState } from 'react'
import { FEEL_LADDER } from '#engine/demand/feelLadder.ts'
import type { Bike } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { words } from '#words/words.ts'
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
    <section className="setup-part" aria-label={words.setup.feelHeading}>
      <h2>{words.setup.feelHeading}</h2>
      <p className="setup-quiet">{words.setup.feelAbout}</p>
      {anchors.length > 0 && (
        <table className="setup-table">
          <thead>
            <tr>
              <th scope="col">{words.setup.feel}</th>
              <th scope="col">{words.setup.units(bike)}</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {anchors.map((anchor, index) => (
              <tr key={anchor.feel}>
                <th scope="row">{sayFeel(anchor.feel)}</th>
                <td>
                  <NumberField
                    label={words.setup.settingOfFeel({ feel: sayFeel(anchor.feel) })}
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
                  <Button
                    tone="quiet"
                    aria-label={words.setup.removeFeel({ feel: sayFeel(anchor.feel) })}
                    onClick={() => put(anchors.toSpliced(index, 1))}
                  >
                    {words.setup.remove}
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

/** One of our feels in the language of the page; another, as an older file may hold, as it was written. */
function sayFeel(name: string): string {
  const known = FEEL_LADDER.find(({ feel }) => feel === name)
  return known ? words.setup.feelName(known) : name
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
        <select aria-label={words.setup.feelToAdd} value={feel} onChange={(event) => setChosen(event.currentTarget.value)}>
          {feels.map((each) => (
            <option key={each} value={each}>
              {sayFeel(each)}
            </option>
          ))}
        </select>
      </div>
      <NumberField<number | null>
        label={words.setup.whereFeel({ feel: sayFeel(feel) })}
        hideLabel
        placeholder={sayAt(bike.base, bike)}
        unit={words.setup.units(bike)}
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
