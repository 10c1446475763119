import { useMemo, useRef, useState } from 'react'
import { calibrateByWatts, settingsToTry, type WattsCalibration } from '#engine/demand/calibrateByWatts.ts'
import { parseBikeSetting, parseRpm, parseWatts, sayAt, sayWithUnit } from '#features/setup/bike/fields.ts'
import type { Bike } from '#plan/model.ts'
import { NumberField } from '#ui/NumberField.tsx'
import type { Setting, Watts } from '#units/units.ts'
import { carriedWords } from './carriedWords.ts'
import { nextEmpty, useFocusNextOnEnter } from './focusNext.ts'
import { Guide } from './Guide.tsx'
import { Outcome } from './Outcome.tsx'
import { Reading } from './Reading.tsx'

interface Props {
  bike: Bike
  onClose: () => void
}

/** Setting by setting, the watts the console shows at one cadence. Anything can be skipped, and more settings added. */
export function ByWatts({ bike, onClose }: Props) {
  const [rpm, setRpm] = useState(bike.referenceRpm)
  const [settings, setSettings] = useState<readonly Setting[]>(() => settingsToTry(bike))
  const [watts, setWatts] = useState<ReadonlyMap<Setting, Watts>>(new Map())
  const [current, setCurrent] = useState<Setting | null>(settings[0] ?? null)
  const list = useRef<HTMLDivElement>(null)
  const goOn = useFocusNextOnEnter()
  const result = useMemo(
    () =>
      calibrateByWatts(
        bike,
        rpm,
        [...watts].map(([setting, shown]) => ({ setting, watts: shown })),
      ),
    [bike, rpm, watts],
  )
  const read = (setting: Setting) => (shown: Watts | undefined) => {
    const next = new Map(watts)
    if (shown === undefined) next.delete(setting)
    else next.set(setting, shown)
    setWatts(next)
    setCurrent(settings.slice(settings.indexOf(setting) + 1).find((other) => !next.has(other)) ?? null)
  }
  const skip = () => {
    const field = list.current?.querySelector<HTMLInputElement>('[data-current="true"] input') ?? null
    const next = list.current ? nextEmpty(list.current, field) : null
    if (next) next.focus()
    else setCurrent(null)
  }
  return (
    <div className="setup-columns">
      <section className="setup-part" aria-label="calibrate by watts">
        <h2>{bike.name}, by the console’s watts</h2>
        <Guide
          say={
            current === null
              ? null
              : `Set the knob to ${sayPlace(current, bike)}. Ride at ${rpm} rev/min until the watts settle, then type them.`
          }
          onSkip={skip}
        />
        <div className="calibrate-cadence">
          <NumberField
            label="one cadence for all"
            value={rpm}
            unit="rev/min"
            hint={`A song of ${2 * rpm} beats a minute keeps it, one strike a beat.`}
            format={String}
            parse={parseRpm}
            onCommit={(next) => {
              setRpm(next)
              return null
            }}
          />
        </div>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: Enter goes on to the next of the fields inside it */}
        <div ref={list} onKeyDown={goOn}>
          <table className="setup-table">
            <thead>
              <tr>
                <th scope="col">{bike.unit}s</th>
                <th scope="col">watts shown</th>
              </tr>
            </thead>
            <tbody>
              {settings.map((setting) => (
                <tr key={setting} data-current={setting === current}>
                  <th scope="row">
                    {sayAt(setting, bike)}
                    {setting === bike.base && <span className="setup-quiet"> base</span>}
                  </th>
                  <td>
                    <Reading
                      label={`watts shown at ${sayAt(setting, bike)}`}
                      value={watts.get(setting)}
                      unit="watts"
                      format={String}
                      parse={parseWatts}
                      onRead={read(setting)}
                      onFocus={() => setCurrent(setting)}
                    />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
        <NumberField<Setting | null>
          label="try another setting"
          className="setup-new"
          unit={`${bike.unit}s`}
          value={null}
          format={() => ''}
          parse={(text) => (text.trim() === '' ? { ok: true, value: null } : parseBikeSetting(text, bike))}
          onCommit={(setting) => {
            if (setting === null) return null
            if (settings.includes(setting)) return 'That setting is on the list.'
            setSettings(settingsToTry({ base: bike.base, points: [...settings, setting].sort((a, b) => a - b).map((each) => [each, 0]) }))
            setCurrent(setting)
            return null
          }}
        />
        <p className="setup-quiet">Stay seated. Under base, only turn the legs as fast as you control them, or skip it.</p>
      </section>
      <Outcome
        before={bike}
        after={result.ok ? result.bike : null}
        problem={problemOf(result, bike)}
        notes={result.ok ? carriedWords(result.carried, bike) : []}
        onClose={onClose}
      />
    </div>
  )
}

const sayPlace = (setting: Setting, bike: Bike): string =>
  setting === bike.base ? `base, ${sayWithUnit(setting, bike)}` : sayWithUnit(setting, bike)

function problemOf(result: WattsCalibration, bike: Bike): string | null {
  if (result.ok) return null
  if (result.reason === 'tooFew') return 'Two settings are the least; the more, the better the curve.'
  const { lower, upper } = result
  return `At ${sayAt(upper.setting, bike)} there are fewer watts than at ${sayAt(lower.setting, bike)}: read one of the two again.`
}
