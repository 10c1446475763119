import type { CurvePoint, RideReport } from '#engine/report.ts'

const WIDTH = 480
const HEIGHT = 130
const LEFT = 20
const TOP = 6
const BOTTOM = 6

interface Props {
  report: RideReport
  /** Drawn over the asked effort; `before` thin, `now` dashed as demand is in Draft. */
  lines: readonly { kind: 'before' | 'now'; runs: readonly CurvePoint[][] }[]
  /** Where nine of ten such riders would lie. */
  band?: { low: readonly CurvePoint[][]; high: readonly CurvePoint[][] }
  /** What is seen, in words. */
  label: string
}

/** The whole ride small: effort asked, and demand over it. */
export function RideLine({ report, lines, band, label }: Props) {
  const total = report.overall.total || 1
  const x = (seconds: number) => LEFT + (seconds / total) * (WIDTH - LEFT)
  const y = (effort: number) => HEIGHT - BOTTOM - (effort / 10) * (HEIGHT - TOP - BOTTOM)
  const path = (run: readonly CurvePoint[]) =>
    run.map(({ at, value }, i) => `${i === 0 ? 'M' : 'L'}${x(at).toFixed(1)} ${y(value).toFixed(1)}`).join('')
  const ground = (run: readonly CurvePoint[]) => `${path(run)}L${x(run.at(-1)!.at).toFixed(1)} ${y(0)}L${x(run[0]!.at).toFixed(1)} ${y(0)}Z`
  const asked = report.curves.intent.filter((run) => run.length > 0)
  return (
    <svg className="setup-ride" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {[0, 5, 10].map((effort) => (
        <g key={effort}>
          <path d={`M${LEFT} ${y(effort)}H${WIDTH}`} className="setup-curve-rule" />
          <text x={LEFT - 6} y={y(effort) + 4} textAnchor="end">
            {effort}
          </text>
        </g>
      ))}
      <path d={asked.map(ground).join('')} className="setup-ride-asked" />
      {band?.high.map((run, i) => (
        <path key={run[0]?.at} d={`${path([...run, ...(band.low[i] ?? []).toReversed()])}Z`} className="setup-ride-band" />
      ))}
      {lines.map(({ kind, runs }) => (
        <path key={kind} d={runs.map(path).join('')} className={`setup-ride-${kind}`} />
      ))}
    </svg>
  )
}
