import { demandLine } from '#engine/demand/demandLine.ts'
import { RideLine } from '#features/setup/parts/RideLine.tsx'
import { useApp } from '#store/useApp.ts'

/** What the ride demands of the rider it is judged for, as their numbers stand. */
export function RidersLine() {
  const report = useApp((state) => (state.received ?? state).report)
  const rider = report?.riders.find(({ reference }) => reference)
  if (!report || !rider || report.blocks.length === 0) return null
  const label = `Effort asked over the ride, and what it demands of the ${rider.rider.name}.`
  return (
    <figure className="setup-narrow">
      <RideLine report={report} label={label} lines={[{ kind: 'now', runs: demandLine(rider) }]} />
      <figcaption className="setup-quiet">effort asked, and dashed what the ride demands of the {rider.rider.name}</figcaption>
    </figure>
  )
}
