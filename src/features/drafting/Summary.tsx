import { useAction } from '#actions/useAction.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { DraftAction } from './actions/draftAction.ts'
import { type DraftGround, useSelectedGround } from './actions/draftGround.ts'
import { OFFERS } from './actions/draftPlaces.ts'

/** The slot, the total and the slack, always in sight, and what the effort adds up to. */
export function Summary() {
  const overall = useApp((state) => state.shownReport?.overall)
  const on = useSelectedGround()
  if (!overall) return null
  const over = overall.slack < 0
  return (
    <div className="summary-line">
      <dl className="summary" data-testid="slot">
        <div className="summary-total">
          <dt className="ui-hidden">total</dt>
          <dd data-total={overall.total}>{formatClock(overall.total)}</dd>
        </div>
        <div data-over={over || undefined}>
          <dt className="ui-hidden">slack</dt>
          <dd>
            {over
              ? `${formatDuration(-overall.slack)} over the ${formatClock(overall.slot)} slot`
              : `${formatDuration(overall.slack)} to spare in ${formatClock(overall.slot)}`}
          </dd>
        </div>
        <div>
          <dt>work</dt>
          <dd>{formatClock(overall.workSeconds)}</dd>
        </div>
        <div>
          <dt>easy</dt>
          <dd>{formatClock(overall.easySeconds)}</dd>
        </div>
        {overall.ratio !== null && (
          <div>
            <dt>work to easy</dt>
            <dd>{formatNumber(overall.ratio, 2)}</dd>
          </div>
        )}
        <div title="Effort times minutes, added up over the ride: an estimate to compare your own classes by.">
          <dt>load</dt>
          <dd>{formatNumber(overall.sessionLoad, 0)}</dd>
        </div>
      </dl>
      {OFFERS.map((action) => (
        <OfferButton key={action.id} action={action} on={on} />
      ))}
    </div>
  )
}

function OfferButton({ action, on }: { action: DraftAction; on: DraftGround }) {
  const { words, pressed, drawn, props } = useAction(action, on)
  if (!drawn) return null
  return (
    <button type="button" className="draft-link" aria-expanded={pressed} {...props}>
      {words}
    </button>
  )
}
