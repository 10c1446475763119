import { useAction } from '#actions/useAction.ts'
import { riderName } from '#plan/names.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import type { ChartLine } from '#store/viewSlice.ts'
import { tell, words } from '#words/words.ts'
import type { DraftAction } from './actions/draftAction.ts'
import { useSelectedGround } from './actions/draftGround.ts'
import { LINES } from './actions/view/lines.ts'

/** What the lines of the chart stand for, which of them are drawn, and whose they are. They differ without their colours. */
export function Legend() {
  const store = useAppStore()
  const shown = useApp((state) => state.shownRider)
  const riders = useApp((state) => state.shownReport?.riders)
  const reference = riders?.find((report) => report.reference)
  return (
    <fieldset className="legend">
      <legend className="ui-hidden">{words.drafting.lines}</legend>
      <span className="legend-line">
        <Sample className="curve-asked" /> {words.drafting.planned}
      </span>
      {LINES.map(({ line, action }) => (
        <LineButton key={line} line={line} action={action} />
      ))}
      <select aria-label={words.drafting.whoseLines} value={shown} onChange={(event) => store.getState().showRider(event.target.value)}>
        {shown === 'reference' && (
          <option value="reference">{reference ? tell(riderName(reference.rider)) : words.drafting.regularRider}</option>
        )}
        {riders
          ?.filter(({ reference }) => shown !== 'reference' || !reference)
          .map(({ rider }) => (
            <option key={rider.id} value={rider.id}>
              {tell(riderName(rider))}
            </option>
          ))}
        <option value="all">{words.drafting.allRiders}</option>
      </select>
    </fieldset>
  )
}

function LineButton({ line, action }: { line: ChartLine; action: DraftAction }) {
  const { words: name, pressed, props } = useAction(action, useSelectedGround())
  return (
    <button type="button" className="legend-line" aria-pressed={pressed} {...props}>
      <Sample className={`curve-${line}`} /> {name}
    </button>
  )
}

function Sample({ className }: { className: string }) {
  return (
    <svg aria-hidden="true">
      <path d="M0 4H20" className={className} />
    </svg>
  )
}
