import { parseRpm, parseWatts, sayAt } from '#features/setup/bike/fields.ts'
import type { Bike } from '#plan/model.ts'
import { NumberField } from '#ui/NumberField.tsx'
import type { Rpm, Setting, Watts } from '#units/units.ts'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { Reading } from './Reading.tsx'

interface Props {
  bike: Bike
  /** What the cadence is called, and what is to be known of it. */
  label: string
  hint: string
  /** The cadence whose watts become the bike's. */
  isFirst: boolean
  rpm: Rpm
  settings: readonly Setting[]
  watts: ReadonlyMap<Setting, Watts>
  current: Setting | null
  /** Takes the cadence, or says why not. */
  onCadence: (rpm: Rpm) => string | null
  onRead: (setting: Setting, watts: Watts | undefined) => void
  onFocus: (setting: Setting) => void
}

/** What the console shows at a list of settings, all at one cadence. */
export function WattsRound({ bike, label, hint, isFirst, rpm, settings, watts, current, onCadence, onRead, onFocus }: Props) {
  return (
    <section aria-label={label}>
      <div className="calibrate-cadence">
        <NumberField label={label} value={rpm} unit={words.riders.rpm} hint={hint} format={String} parse={parseRpm} onCommit={onCadence} />
      </div>
      <table className="setup-table">
        <thead>
          <tr>
            <th scope="col">{words.setup.units(bike)}</th>
            <th scope="col">{words.calibrating.wattsShown}</th>
          </tr>
        </thead>
        <tbody>
          {settings.map((setting) => (
            <tr key={setting} data-current={setting === current}>
              <th scope="row">
                {sayAt(setting, bike)}
                {setting === bike.base && <span className="setup-quiet"> {words.setup.base}</span>}
              </th>
              <td>
                <Reading
                  label={
                    isFirst
                      ? words.calibrating.wattsShownAt({ at: sayAt(setting, bike) })
                      : words.calibrating.wattsShownAtRpm({ at: sayAt(setting, bike), rpm })
                  }
                  value={watts.get(setting)}
                  unit={words.setup.watts}
                  format={(shown) => number(shown, 1)}
                  parse={parseWatts}
                  onRead={(shown) => onRead(setting, shown)}
                  onFocus={() => onFocus(setting)}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
