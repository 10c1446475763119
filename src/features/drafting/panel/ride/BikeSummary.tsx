import { memo } from 'react'
import { FactRow } from '#features/drafting/panel/rows/FactRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import type { Bike, Ride } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'
import type { Choice } from '#ui/Select.tsx'
import { formatSetting } from '#units/formatSetting.ts'

interface BikeSummaryProps {
  bike: Bike
  datum: Ride['datum']
  onDatum: (datum: Ride['datum']) => void
  /** Goes to where bikes are described and calibrated. */
  onOpen: () => void
}

const DATUMS: readonly Choice<Ride['datum']>[] = [
  { value: 'base', label: 'each rider’s base' },
  { value: 'loose', label: 'the loose wheel' },
]

/** The resistance scale the ride is written for, in short. */
export const BikeSummary = memo(function BikeSummary({ bike, datum, onDatum, onOpen }: BikeSummaryProps) {
  return (
    <section className="panel-group" aria-label="bike">
      <h3>bike</h3>
      <div className="panel-rows">
        <FactRow label="name">
          <b>{bike.name}</b>
        </FactRow>
        <FactRow label="scale">{sayScale(bike)}</FactRow>
        <SelectRow label="count from" value={datum} choices={DATUMS} onChange={onDatum} />
      </div>
      <Button onClick={onOpen}>change or calibrate the bike</Button>
    </section>
  )
})

/** "¼ turn, base 2 of 20, friction" */
function sayScale({ unit, stepsPerUnit, base, max, brake }: Bike): string {
  const steps = stepsPerUnit === 1 ? `whole ${unit}s` : `${formatSetting(1, stepsPerUnit)} ${unit}`
  const at = (setting: number) => formatSetting(Math.round(setting * stepsPerUnit), stepsPerUnit)
  return `${steps}, base ${at(base)} of ${at(max)}, ${brake}`
}
