import { sayBand } from '#engine/band/sayBand.ts'
import { demandLine } from '#engine/demand/demandLine.ts'
import { RideLine } from '#features/setup/parts/RideLine.tsx'
import { useApp } from '#store/useApp.ts'
import { formatNumber } from '#units/formatNumber.ts'
import './riders.css'

/** What the ride demands of the rider it is judged for, as their numbers stand. */
export function RidersLine() {
  const report = useApp((state) => (state.received ?? state).report)
  const rider = report?.riders.find(({ reference }) => reference)
  if (!report || !rider || report.blocks.length === 0) return null
  const { demand, energy } = rider.band
  const band = { low: demandLine({ demand: demand.low }), high: demandLine({ demand: demand.high }) }
  const label = `Effort asked over the ride, and what it demands of the ${rider.rider.name}.`
  return (
    <figure className="setup-narrow">
      <RideLine report={report} label={label} lines={[{ kind: 'now', runs: demandLine(rider) }]} band={band} />
      <figcaption className="setup-quiet">
        effort asked, and dashed what the ride demands of the {rider.rider.name}, in its band; about {tens(rider.energy.kcal)} kcal (
        {tens(energy.low)}–{tens(energy.high)}). {sayBand(report)}
      </figcaption>
    </figure>
  )
}

/** An estimate is told in tens. */
const tens = (kcal: number): string => formatNumber(10 * Math.round(kcal / 10), 0)
