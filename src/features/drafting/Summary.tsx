import { canRoughIn } from '#engine/roughIn/roughIn.ts'
import type { Offer } from '#features/drafting/proposals/useOffer.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'

interface SummaryProps {
  /** What of these is open. */
  offer: Offer | null
  /** Asked to fit the ride to its slot, and for a version of another length; all absent where nothing may be changed. */
  onFit?: (() => void) | undefined
  onOtherLength?: (() => void) | undefined
  /** Asked for a first draft of the songs nothing is planned for. */
  onRoughIn?: (() => void) | undefined
}

/** The slot, the total and the slack, always in sight, and what the effort adds up to. */
export function Summary({ offer, onFit, onOtherLength, onRoughIn }: SummaryProps) {
  const overall = useApp((state) => state.shownReport?.overall)
  const empty = useApp((state) => state.shown?.sections.length === 0)
  const open = useApp((state) => state.ride !== null && canRoughIn(state.ride))
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
      {onRoughIn && open && (
        <button type="button" className="draft-link" aria-expanded={offer === 'draft'} onClick={onRoughIn}>
          rough in
        </button>
      )}
      {onFit && !empty && (
        <button type="button" className="draft-link" aria-expanded={offer === 'slot'} onClick={onFit}>
          fit to the slot
        </button>
      )}
      {onOtherLength && !empty && (
        <button type="button" className="draft-link" aria-expanded={offer === 'length'} onClick={onOtherLength}>
          shorter or longer version
        </button>
      )}
    </div>
  )
}
