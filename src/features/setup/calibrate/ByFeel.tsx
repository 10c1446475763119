import { useMemo, useRef, useState } from 'react'
import { ridersOf } from '#engine/assembly/reportRiders.ts'
import { calibrateByFeel, type FeelCalibration, type FeelRound } from '#engine/demand/calibrateByFeel.ts'
import { FEEL_LADDER, type Feel } from '#engine/demand/feelLadder.ts'
import { referenceRiderIndex } from '#engine/demand/riderSetting.ts'
import { parseBikeSetting, parseRpm, sayAt } from '#features/setup/bike/fields.ts'
import { useRide } from '#features/setup/parts/useRide.ts'
import type { Bike } from '#plan/model.ts'
import { bikeName, riderName } from '#plan/names.ts'
import { NumberField } from '#ui/NumberField.tsx'
import { Select } from '#ui/Select.tsx'
import type { Rpm, Setting } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import { brakeWords } from './brakeWords.ts'
import { carriedWords } from './carriedWords.ts'
import { nextEmpty, useFocusNextOnEnter } from './focusNext.ts'
import { Guide } from './Guide.tsx'
import { Outcome } from './Outcome.tsx'
import { Reading } from './Reading.tsx'

interface Props {
  bike: Bike
  onClose: () => void
}

/** Two cadences well apart that one can sit at through a hill; common practice. */
const CADENCES: readonly [Rpm, Rpm] = [65, 90]

type Found = Readonly<Partial<Record<Feel, Setting>>>
interface Cell {
  round: 0 | 1
  feel: Feel
}

/** Where each feel is found at a slow and at a quick cadence, without a console. Anything can be skipped. */
export function ByFeel({ bike, onClose }: Props) {
  const riders = useRide(ridersOf)
  const reference = useRide((ride) => referenceRiderIndex(riders, ride.level))
  const [riderId, setRiderId] = useState(riders[reference]!.id)
  const rider = riders.find(({ id }) => id === riderId) ?? riders[reference]!
  const [rpms, setRpms] = useState<readonly [Rpm, Rpm]>(CADENCES)
  const [found, setFound] = useState<readonly [Found, Found]>([{}, {}])
  const [current, setCurrent] = useState<Cell | null>({ round: 0, feel: FEEL_LADDER[0].feel })
  const table = useRef<HTMLDivElement>(null)
  const goOn = useFocusNextOnEnter()
  const result = useMemo(
    () =>
      calibrateByFeel(
        bike,
        rider,
        rpms.map((rpm, i) => roundOf(rpm, found[i]!)).filter((round) => round.found.length > 0),
      ),
    [bike, rider, rpms, found],
  )
  const read =
    ({ round, feel }: Cell) =>
    (setting: Setting | undefined) => {
      const { [feel]: _before, ...others } = found[round]
      const next = setting === undefined ? others : { ...others, [feel]: setting }
      const both: readonly [Found, Found] = round === 0 ? [next, found[1]] : [found[0], next]
      setFound(both)
      setCurrent(nextCell({ round, feel }, both))
    }
  const skip = () => {
    const field = table.current?.querySelector<HTMLInputElement>('[data-current="true"] input') ?? null
    const next = table.current ? nextEmpty(table.current, field) : null
    if (next) next.focus()
    else setCurrent(null)
  }
  const isCurrent = (cell: Cell) => current?.round === cell.round && current.feel === cell.feel
  return (
    <div className="setup-columns">
      <section className="setup-part" aria-label={words.calibrating.byFeelLabel}>
        <h2>{words.calibrating.byFeelTitle({ bike: tell(bikeName(bike)) })}</h2>
        <Guide say={current && sayNow(current, rpms[current.round], bike)} onSkip={skip} />
        <Select
          label={words.calibrating.whoRides}
          className="setup-new"
          value={rider.id}
          choices={riders.map((each) => ({ value: each.id, label: tell(riderName(each)) }))}
          onChange={setRiderId}
        />
        {/* biome-ignore lint/a11y/noStaticElementInteractions: Enter goes on to the next of the fields inside it */}
        <div ref={table} onKeyDown={goOn} className="calibrate-feels">
          {([0, 1] as const).map((round) => (
            <section key={round} aria-label={round === 0 ? words.calibrating.firstCadence : words.calibrating.secondCadence}>
              <NumberField
                label={round === 0 ? words.calibrating.firstAt : words.calibrating.thenAt}
                value={rpms[round]}
                unit={words.riders.rpm}
                format={String}
                parse={parseRpm}
                onCommit={(rpm) => {
                  if (rpm === rpms[1 - round]) return words.calibrating.sameCadence
                  setRpms(round === 0 ? [rpm, rpms[1]] : [rpms[0], rpm])
                  return null
                }}
              />
              <table className="setup-table">
                <tbody>
                  {FEEL_LADDER.map(({ feel }) => (
                    <tr key={feel} data-current={isCurrent({ round, feel })}>
                      <th scope="row">{words.setup.feelName({ feel })}</th>
                      <td>
                        <Reading
                          label={words.calibrating.feelAt({ feel, rpm: rpms[round] })}
                          value={found[round][feel]}
                          format={(setting) => sayAt(setting, bike)}
                          parse={(text) => parseBikeSetting(text, bike)}
                          onRead={read({ round, feel })}
                          onFocus={() => setCurrent({ round, feel })}
                        />
                      </td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </section>
          ))}
        </div>
        <p className="setup-quiet">{words.calibrating.rough}</p>
      </section>
      <Outcome
        before={bike}
        after={result.ok ? result.bike : null}
        problem={problemOf(result)}
        notes={notes(result, bike)}
        onClose={onClose}
      />
    </div>
  )
}

const CELLS: readonly Cell[] = ([0, 1] as const).flatMap((round) => FEEL_LADDER.map(({ feel }) => ({ round, feel })))

/** The first feel not found after one, down the first cadence and then the second. */
function nextCell({ round, feel }: Cell, found: readonly [Found, Found]): Cell | null {
  const at = CELLS.findIndex((cell) => cell.round === round && cell.feel === feel)
  return CELLS.slice(at + 1).find((cell) => found[cell.round][cell.feel] === undefined) ?? null
}

const roundOf = (rpm: Rpm, found: Found): FeelRound => ({
  rpm,
  found: FEEL_LADDER.flatMap(({ feel }) => {
    const setting = found[feel]
    return setting === undefined ? [] : [{ feel, setting }]
  }),
})

const sayNow = ({ feel }: Cell, rpm: Rpm, { unit }: Bike): string => words.calibrating.findFeel({ feel, rpm, unit })

function problemOf(result: FeelCalibration): string | null {
  if (result.ok) return null
  return result.reason === 'tooFew' ? words.calibrating.tooFewFeels : words.calibrating.wrongWay
}

function notes(result: FeelCalibration, bike: Bike): string[] {
  if (!result.ok) return []
  const base =
    result.bike.base === bike.base ? [] : [words.calibrating.baseMoves({ from: sayAt(bike.base, bike), to: sayAt(result.bike.base, bike) })]
  return [brakeWords(result.guess, bike), ...base, ...carriedWords(result.carried, bike)]
}
