import { useApp, useAppStore } from '#store/useApp.ts'
import { CHART_LINES, type ChartLine } from '#store/viewSlice.ts'

const LINES: Record<ChartLine, { name: string; says: string }> = {
  demand: {
    name: 'demand',
    says: 'the effort that resistance, cadence and posture ask of this rider: an estimate, in a band that holds nine of ten such riders',
  },
  heart: {
    name: 'heart',
    says: 'predicted heart rate as a share of the reserve: an estimate for a modelled rider, not a measurement, in a band for nine of ten',
  },
  reserve: {
    name: 'reserve',
    says: 'what is left of the work capacity above threshold: an estimate, in a band that holds three published recoveries',
  },
  strain: { name: 'strain', says: 'the asked effort, smoothed: how the class builds, not a heart rate' },
}

/** What the lines of the chart stand for, which of them are drawn, and whose they are. They differ without their colours. */
export function Legend() {
  const store = useAppStore()
  const lines = useApp((state) => state.lines)
  const shown = useApp((state) => state.shownRider)
  const riders = useApp((state) => state.shownReport?.riders)
  return (
    <fieldset className="legend">
      <legend className="ui-hidden">lines of the chart</legend>
      <span className="legend-line">
        <Sample className="curve-asked" /> asked
      </span>
      {CHART_LINES.map((line) => (
        <button
          key={line}
          type="button"
          className="legend-line"
          aria-pressed={lines[line]}
          title={LINES[line].says}
          onClick={() => store.getState().toggleLine(line)}
        >
          <Sample className={`curve-${line}`} /> {LINES[line].name}
        </button>
      ))}
      <select aria-label="whose lines" value={shown} onChange={(event) => store.getState().showRider(event.target.value)}>
        {shown === 'reference' && (
          <option value="reference">{riders?.find(({ reference }) => reference)?.rider.name ?? 'regular rider'}</option>
        )}
        {riders
          ?.filter(({ reference }) => shown !== 'reference' || !reference)
          .map(({ rider }) => (
            <option key={rider.id} value={rider.id}>
              {rider.name}
            </option>
          ))}
        <option value="all">all riders</option>
      </select>
    </fieldset>
  )
}

function Sample({ className }: { className: string }) {
  return (
    <svg aria-hidden="true">
      <path d="M0 4H20" className={className} />
    </svg>
  )
}
