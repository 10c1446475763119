import { demandLine } from '#engine/demand/demandLine.ts'
import { BikeCurve } from '#features/setup/bike/BikeCurve.tsx'
import { RideLine } from '#features/setup/parts/RideLine.tsx'
import type { Bike } from '#plan/model.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
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
  const words = after ? changeWords(report, shownReport) : null
  return (
    <section className="setup-part" aria-label="what it changes">
      <h2>what it changes</h2>
      <p role="status">{problem ?? words}</p>
      <BikeCurve bike={after ?? before} before={after ? before : undefined} />
      {report.blocks.length > 0 && (
        <figure>
          <RideLine
            report={report}
            label={words ?? `What the ride demands of the ${old.rider.name} as it is.`}
            lines={[...(after ? [{ kind: 'before' as const, runs: demandLine(old) }] : []), { kind: 'now', runs: demandLine(now) }]}
          />
          <figcaption className="setup-quiet">
            effort asked, and dashed what the ride demands of the {old.rider.name}
            {after && '; thin: as it was'}
          </figcaption>
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
          take this calibration
        </Button>
        <Button onClick={onClose}>leave the bike as it is</Button>
      </div>
    </section>
  )
}
