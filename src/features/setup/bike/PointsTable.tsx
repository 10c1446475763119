import type { Bike } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import type { Setting, Watts } from '#units/units.ts'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { parseBikeSetting, parseWatts, sayAt } from './fields.ts'
import { pointsProblem, withPoint } from './points.ts'

interface Props {
  bike: Bike
  onChange: (bike: Bike) => void
}

/** Power by setting. Points rise; a point is added by its setting, on the curve as it is. */
export function PointsTable({ bike, onChange }: Props) {
  const { points, unit } = bike
  const setWatts = (index: number) => (watts: Watts) => {
    const next = points.map((point, i): readonly [Setting, Watts] => (i === index ? [point[0], watts] : point))
    const problem = pointsProblem(next, bike)
    if (problem === null && watts !== points[index]![1]) onChange({ ...bike, points: next })
    return problem
  }
  return (
    <div>
      <table className="setup-table">
        <thead>
          <tr>
            <th scope="col">{words.setup.units({ unit })}</th>
            <th scope="col">{words.setup.watts}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {points.map(([setting, watts], index) => (
            <tr key={setting} data-base={setting === bike.base}>
              <th scope="row">
                {sayAt(setting, bike)}
                {setting === bike.base && <span className="setup-quiet"> {words.setup.base}</span>}
              </th>
              <td>
                <NumberField
                  label={words.setup.wattsAt({ at: sayAt(setting, bike) })}
                  hideLabel
                  inputMode="decimal"
                  value={watts}
                  format={(value) => number(value, 1)}
                  parse={parseWatts}
                  onCommit={setWatts(index)}
                />
              </td>
              <td>
                {points.length > 2 && (
                  <Button
                    tone="quiet"
                    aria-label={words.setup.removePoint({ at: sayAt(setting, bike) })}
                    onClick={() => onChange({ ...bike, points: points.toSpliced(index, 1) })}
                  >
                    {words.setup.remove}
                  </Button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {points.length < 60 && <NewPoint bike={bike} onAdd={(setting) => onChange({ ...bike, points: withPoint(bike, setting) })} />}
    </div>
  )
}

function NewPoint({ bike, onAdd }: { bike: Bike; onAdd: (setting: Setting) => void }) {
  return (
    <NumberField<Setting | null>
      label={words.setup.addPoint}
      className="setup-new"
      placeholder={sayAt(bike.base + 0.5, bike)}
      unit={words.setup.units(bike)}
      value={null}
      format={() => ''}
      parse={(text) => (text.trim() === '' ? { ok: true, value: null } : parseBikeSetting(text, bike))}
      onCommit={(setting) => {
        if (setting === null) return null
        if (bike.points.some(([other]) => other === setting)) return words.setup.pointExists
        onAdd(setting)
        return null
      }}
    />
  )
}
