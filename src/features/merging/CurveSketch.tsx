import type { RideReport } from '#engine/report.ts'
import type { Seconds } from '#units/units.ts'
import './changes.css'

interface Props {
  report: RideReport
  /** The stretch shown; the whole ride unless given. */
  from?: Seconds
  to?: Seconds
  /** Another plan's curve to compare with, drawn thin and dashed. */
  beside?: RideReport
  /** What it shows; without, it is decoration beside words that say as much. */
  label?: string
}

const WIDTH = 300
const HEIGHT = 48
const MARGIN = 2

/** The intensity curve of a ride or a stretch of it, small, with another's over it. */
export function CurveSketch({ report, beside, from = 0, to, label }: Props) {
  const end = to ?? Math.max(report.overall.total, beside?.overall.total ?? 0)
  const x = (at: Seconds) => ((at - from) / Math.max(1, end - from)) * WIDTH
  const y = (effort: number) => HEIGHT - MARGIN - (effort / 10) * (HEIGHT - 2 * MARGIN)
  const line = (plan: RideReport) =>
    plan.curves.intent.map((run) => `M${run.map(({ at, value }) => `${x(at).toFixed(1)} ${y(value).toFixed(1)}`).join('L')}`).join('')
  const area = report.curves.intent
    .filter((run) => run.length > 1)
    .map(
      (run) =>
        `M${x(run[0]!.at)} ${y(0)}L${run.map(({ at, value }) => `${x(at).toFixed(1)} ${y(value).toFixed(1)}`).join('L')}L${x(run.at(-1)!.at)} ${y(0)}Z`,
    )
    .join('')
  return (
    <svg
      className="merging-curve"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      role={label && 'img'}
      aria-label={label}
      aria-hidden={label === undefined}
    >
      <path d={area} className="merging-curve-area" />
      <path d={line(report)} className="merging-curve-line" vectorEffect="non-scaling-stroke" />
      {beside && <path d={line(beside)} className="merging-curve-beside" vectorEffect="non-scaling-stroke" />}
      <line x1="0" x2={WIDTH} y1={y(0)} y2={y(0)} className="merging-curve-ground" vectorEffect="non-scaling-stroke" />
    </svg>
  )
}
