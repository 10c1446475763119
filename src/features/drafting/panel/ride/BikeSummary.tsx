import { memo } from 'react'
import { FactRow } from '#features/drafting/panel/rows/FactRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import type { Bike, Ride } from '#plan/model.ts'
import { bikeName } from '#plan/names.ts'
import { Button } from '#ui/Button.tsx'
import type { Choice } from '#ui/Select.tsx'
import { setting } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

interface BikeSummaryProps {
  bike: Bike
  datum: Ride['datum']
  onDatum: (datum: Ride['datum']) => void
  /** Goes to where bikes are described and calibrated. */
  onOpen: () => void
}

const datumChoices = (): readonly Choice<Ride['datum']>[] => [
  { value: 'base', label: words.panelsRide.eachBase },
  { value: 'loose', label: words.panelsRide.looseWheel },
]

/** The resistance scale the ride is written for, in short. */
export const BikeSummary = memo(function BikeSummary({ bike, datum, onDatum, onOpen }: BikeSummaryProps) {
  return (
    <section className="panel-group" aria-label={words.panelsRide.bike}>
      <h3>{words.panelsRide.bike}</h3>
      <div className="panel-rows">
        <FactRow label={words.panels.name}>
          <b>{tell(bikeName(bike))}</b>
        </FactRow>
        <FactRow label={words.panelsRide.scale}>{sayScale(bike)}</FactRow>
        <SelectRow label={words.panelsRide.countFrom} value={datum} choices={datumChoices()} onChange={onDatum} />
      </div>
      <Button onClick={onOpen}>{words.panelsRide.changeBike}</Button>
    </section>
  )
})

/** "¼ turn, base 2 of 20, friction" */
function sayScale({ unit, stepsPerUnit, base, max, brake }: Bike): string {
  const { measures, panelsRide } = words
  const steps =
    stepsPerUnit === 1 ? panelsRide.wholeUnits({ units: measures.unitOf(unit, true) }) : measures.settingOf(1, { unit, stepsPerUnit })
  const at = (value: number) => setting(Math.round(value * stepsPerUnit), stepsPerUnit)
  return panelsRide.scaleIs({ steps, base: at(base), max: at(max), brake })
}
