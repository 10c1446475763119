import { sayBand } from '#engine/band/sayBand.ts'
import { demandLine } from '#engine/demand/demandLine.ts'
import { RideLine } from '#features/setup/parts/RideLine.tsx'
import { riderInSentence } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { tell, words } from '#words/words.ts'
import './riders.css'

/** The estimated effort of the rider the checks use, as their numbers stand. */
export function RidersLine() {
  const report = useApp((state) => (state.received ?? state).report)
  const rider = report?.riders.find(({ reference }) => reference)
  if (!report || !rider || report.blocks.length === 0) return null
  const { demand, energy } = rider.band
  const band = { low: demandLine({ demand: demand.low }), high: demandLine({ demand: demand.high }) }
  const name = tell(riderInSentence(rider.rider))
  return (
    <figure className="setup-narrow">
      <RideLine
        report={report}
        label={words.riders.lineLabel({ rider: name })}
        lines={[{ kind: 'now', runs: demandLine(rider) }]}
        band={band}
      />
      <figcaption className="setup-quiet">
        {words.riders.lineCaption({ rider: name, kcal: tens(rider.energy.kcal), low: tens(energy.low), high: tens(energy.high) })}{' '}
        {tell(sayBand(report))}
      </figcaption>
    </figure>
  )
}

/** An estimate is told in tens. */
const tens = (kcal: number): number => 10 * Math.round(kcal / 10)
