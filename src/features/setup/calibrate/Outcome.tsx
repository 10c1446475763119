import { demandLine } from '#engine/demand/demandLine.ts'
import { BikeCurve } from '#features/setup/bike/BikeCurve.tsx'
import { RideLine } from '#features/setup/parts/RideLine.tsx'
import type { Bike } from '#plan/model.ts'
import { riderInSentence } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { tell, words } from '#words/words.ts'
import { changeWords } from './changeWords.ts'
import { usePreviewedBike } from './usePreviewedBike.ts'

interface Props {
  before: Bike
  /** Null while the readings make no calibration. */
  after: Bike | null
  /** Why they do not, in a sentence. */
  problem: string | null
  /** What has to be known of the result. */
  notes: readonly string[]
  onClose: () => void
}

/** What a calibration would change: the bike's curve, and what this ride then demands. It is taken here, or left. */
export function Outcome({ before, after, problem, notes, onClose }: Props) {
  const take = usePreviewedBike(after)
  const report = useApp((state) => state.report)
  const shownReport = useApp((state) => state.shownReport)
  if (!report || !shownReport) return null
  const old = report.riders.find(({ reference }) => reference)!
  const now = shownReport.riders.find(({ reference }) => reference)!
  const rider = tell(riderInSentence(old.rider))
  const change = after ? changeWords(report, shownReport) : null
  return (
    <section className="setup-part" aria-label={words.calibrating.changes}>
      <h2>{words.calibrating.changes}</h2>
      <p role="status">{problem ?? change}</p>
      <BikeCurve bike={after ?? before} before={after ? before : undefined} />
      {report.blocks.length > 0 && (
        <figure>
          <RideLine
            report={report}
            label={change ?? words.calibrating.rideLabel({ rider })}
            lines={[...(after ? [{ kind: 'before' as const, runs: demandLine(old) }] : []), { kind: 'now', runs: demandLine(now) }]}
          />
          <figcaption className="setup-quiet">{words.calibrating.rideCaption({ rider, before: after !== null })}</figcaption>
        </figure>
      )}
      {after && notes.length > 0 && (
        <ul className="setup-notes">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <div className="setup-buttons">
        <Button
          tone="solid"
          disabled={!after}
          onClick={() => {
            take()
            onClose()
          }}
        >
          {words.calibrating.use}
        </Button>
        <Button onClick={onClose}>{words.calibrating.cancel}</Button>
      </div>
    </section>
  )
}
