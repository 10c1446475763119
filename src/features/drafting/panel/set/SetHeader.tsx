import type { SetBlock } from '#plan/model.ts'
import { nameOfItem } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { plural } from '#units/plural.ts'

/** What a set is called, where it stands, and its work against its easy time. */
export function SetHeader({ set }: { set: SetBlock }) {
  const report = useApp((state) => state.shownReport?.sets.find(({ setId }) => setId === set.id))
  return (
    <header className="panel-header">
      <h2>
        <span className="panel-name">{nameOfItem(set)}</span>
      </h2>
      {report && (
        <>
          <p className="panel-where">
            {formatClock(report.from)} to {formatClock(report.to)} · {plural(set.rounds, 'round')} of{' '}
            {formatDuration((report.to - report.from) / set.rounds)}
          </p>
          <p className="panel-where">
            work {formatClock(report.workSeconds)}, easy {formatClock(report.easySeconds)}
            {report.ratio !== null && report.workSeconds > 0 && `, ${formatNumber(report.ratio, 2)} to one`}
          </p>
        </>
      )}
    </header>
  )
}
