import { useMemo, useRef, useState } from 'react'
import { calibrateByWatts, settingsToTry, type WattsCalibration } from '#engine/demand/calibrateByWatts.ts'
import { parseBikeSetting, sayAt, sayWithUnit } from '#features/setup/bike/fields.ts'
import type { Bike } from '#plan/model.ts'
import { bikeName } from '#plan/names.ts'
import { NumberField } from '#ui/NumberField.tsx'
import type { Rpm, Setting, Watts } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import { brakeWords } from './brakeWords.ts'
import { carriedWords } from './carriedWords.ts'
import { nextEmpty, useFocusNextOnEnter } from './focusNext.ts'
import { Guide } from './Guide.tsx'
import { Outcome } from './Outcome.tsx'
import { WattsRound } from './WattsRound.tsx'

interface Props {
  bike: Bike
  onClose: () => void
}

/** A second cadence well away from the first that can be ridden seated; common practice. */
const secondOf = (rpm: Rpm): Rpm => (rpm >= 75 ? 60 : 90)

/** Readings at the first cadence after which a second is worth riding. */
const ENOUGH = 2

const BOTH = [0, 1] as const

type Read = ReadonlyMap<Setting, Watts>
interface Cell {
  round: 0 | 1
  setting: Setting
}

/** Setting by setting, the watts the console shows at one cadence, and at another to tell the brake. Anything can be skipped, and more settings added. */
export function ByWatts({ bike, onClose }: Props) {
  const [rpms, setRpms] = useState<readonly [Rpm, Rpm]>([bike.referenceRpm, secondOf(bike.referenceRpm)])
  const [settings, setSettings] = useState<readonly Setting[]>(() => settingsToTry(bike))
  const [watts, setWatts] = useState<readonly [Read, Read]>([new Map(), new Map()])
  const [current, setCurrent] = useState<Cell | null>(() => (settings[0] === undefined ? null : { round: 0, setting: settings[0] }))
  const list = useRef<HTMLDivElement>(null)
  const goOn = useFocusNextOnEnter()
  const result = useMemo(
    () => calibrateByWatts(bike, rpms[0], readingsOf(watts[0]), { rpm: rpms[1], readings: readingsOf(watts[1]) }),
    [bike, rpms, watts],
  )
  const listed = (round: 0 | 1, first = watts[0]) => (round === 0 ? settings : settings.filter((setting) => first.has(setting)))
  const read = (round: 0 | 1, setting: Setting, shown: Watts | undefined) => {
    const next = new Map(watts[round])
    if (shown === undefined) next.delete(setting)
    else next.set(setting, shown)
    const both: readonly [Read, Read] = round === 0 ? [next, watts[1]] : [watts[0], next]
    setWatts(both)
    const cells = BOTH.flatMap((each) =>
      each === 0 || both[0].size >= ENOUGH ? listed(each, both[0]).map((at) => ({ round: each, setting: at })) : [],
    )
    const at = cells.findIndex((cell) => cell.round === round && cell.setting === setting)
    setCurrent(cells.slice(at + 1).find((cell) => !both[cell.round].has(cell.setting)) ?? null)
  }
  const skip = () => {
    const field = list.current?.querySelector<HTMLInputElement>('[data-current="true"] input') ?? null
    const next = list.current ? nextEmpty(list.current, field) : null
    if (next) next.focus()
    else setCurrent(null)
  }
  const round = (each: 0 | 1, label: string, hint: string) => (
    <WattsRound
      key={each}
      bike={bike}
      label={label}
      hint={hint}
      isFirst={each === 0}
      rpm={rpms[each]}
      settings={listed(each)}
      watts={watts[each]}
      current={current?.round === each ? current.setting : null}
      onCadence={(rpm) => {
        if (each === 1 && rpm === rpms[0]) return words.calibrating.sameCadence
        setRpms(each === 1 ? [rpms[0], rpm] : [rpm, rpm === rpms[1] ? secondOf(rpm) : rpms[1]])
        return null
      }}
      onRead={(setting, shown) => read(each, setting, shown)}
      onFocus={(setting) => setCurrent({ round: each, setting })}
    />
  )
  return (
    <div className="setup-columns">
      <section className="setup-part" aria-label={words.calibrating.byWattsLabel}>
        <h2>{words.calibrating.byWattsTitle({ bike: tell(bikeName(bike)) })}</h2>
        <Guide say={current && sayNow(current, rpms[current.round], bike)} onSkip={skip} />
        {/* biome-ignore lint/a11y/noStaticElementInteractions: Enter goes on to the next of the fields inside it */}
        <div ref={list} onKeyDown={goOn} className="calibrate-feels">
          {round(0, words.calibrating.oneCadence, words.calibrating.oneCadenceHint({ bpm: 2 * rpms[0], rpm: rpms[0] }))}
          {watts[0].size >= ENOUGH && round(1, words.calibrating.anotherCadence, words.calibrating.anotherCadenceHint)}
        </div>
        <NumberField<Setting | null>
          label={words.calibrating.tryAnother}
          className="setup-new"
          unit={words.setup.units(bike)}
          value={null}
          format={() => ''}
          parse={(text) => (text.trim() === '' ? { ok: true, value: null } : parseBikeSetting(text, bike))}
          onCommit={(setting) => {
            if (setting === null) return null
            if (settings.includes(setting)) return words.calibrating.alreadyListed
            setSettings(settingsToTry({ base: bike.base, points: [...settings, setting].sort((a, b) => a - b).map((each) => [each, 0]) }))
            setCurrent({ round: 0, setting })
            return null
          }}
        />
        <p className="setup-quiet">{words.calibrating.stay}</p>
      </section>
      <Outcome
        before={bike}
        after={result.ok ? result.bike : null}
        problem={problemOf(result, bike)}
        notes={result.ok ? [...(result.guess ? [brakeWords(result.guess, bike)] : []), ...carriedWords(result.carried, bike)] : []}
        onClose={onClose}
      />
    </div>
  )
}

const readingsOf = (watts: Read) => [...watts].map(([setting, shown]) => ({ setting, watts: shown }))

const sayNow = ({ setting }: Cell, rpm: Rpm, bike: Bike): string =>
  words.calibrating.setKnob({ setting: sayWithUnit(setting, bike), isBase: setting === bike.base, rpm })

function problemOf(result: WattsCalibration, bike: Bike): string | null {
  if (result.ok) return null
  if (result.reason === 'tooFew') return words.calibrating.tooFewWatts
  const { lower, upper } = result
  return words.calibrating.falls({ upper: sayAt(upper.setting, bike), lower: sayAt(lower.setting, bike) })
}
