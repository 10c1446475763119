import { useAction } from '#actions/useAction.ts'
import { useApp } from '#store/useApp.ts'
import { clock, number } from '#words/forms.ts'
import { words } from '#words/words.ts'
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
          <dt className="ui-hidden">{words.drafting.total}</dt>
          <dd data-total={overall.total}>{clock(overall.total)}</dd>
        </div>
        <div data-over={over || undefined}>
          <dt className="ui-hidden">{words.drafting.slack}</dt>
          <dd>
            {over
              ? words.drafting.over({ over: -overall.slack, slot: overall.slot })
              : words.drafting.under({ under: overall.slack, slot: overall.slot })}
          </dd>
        </div>
        <div>
          <dt>{words.drafting.work}</dt>
          <dd>{clock(overall.workSeconds)}</dd>
        </div>
        <div>
          <dt>{words.drafting.easy}</dt>
          <dd>{clock(overall.easySeconds)}</dd>
        </div>
        {overall.ratio !== null && (
          <div>
            <dt>{words.drafting.workToEasy}</dt>
            <dd>{words.drafting.ratio({ ratio: overall.ratio })}</dd>
          </div>
        )}
        <div title={words.drafting.loadMeans}>
          <dt>{words.drafting.load}</dt>
          <dd>{number(overall.sessionLoad, 0)}</dd>
        </div>
      </dl>
      {OFFERS.map((action) => (
        <OfferButton key={action.id} action={action} on={on} />
      ))}
    </div>
  )
}

function OfferButton({ action, on }: { action: DraftAction; on: DraftGround }) {
  const { words: name, pressed, drawn, props } = useAction(action, on)
  if (!drawn) return null
  return (
    <button type="button" className="draft-link" aria-expanded={pressed} {...props}>
      {name}
    </button>
  )
}
