import { memo } from 'react'
import { CartesianGrid, ComposedChart, usePlotArea, XAxis, YAxis } from 'recharts'
import { demandLine } from '#engine/demand/demandLine.ts'
import type { RideReport } from '#engine/report.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import type { Seconds } from '#units/units.ts'
import { areaPath, linePath, type Projection } from './curvePath.ts'
import { heartRuns, reserveRuns, shownRiders, strainRuns } from './riderLines.ts'
import { type TimeScale, timeTicks, toX } from './timeScale.ts'

const HEIGHT = 178
const MARGIN = { top: 10, right: 0, bottom: 0, left: 0 }
const AXIS = 22
const LEVELS = [0, 2, 4, 6, 8, 10]
// Beside its moment, not around it: the first one would be cut at the edge.
const TICK = { textAnchor: 'start', dx: 3 } as const

/**
 * The frame (time axis, level lines) is Recharts' and is drawn again only when the zoom or the reach
 * changes; the curves are one child of its plot area and follow every change of the ride.
 */
export const IntensityChart = memo(function IntensityChart({ scale, reach, slot }: { scale: TimeScale; reach: Seconds; slot: Seconds }) {
  return (
    <div className="chart" aria-hidden="true">
      <ComposedChart width={toX(scale, reach)} height={HEIGHT} margin={MARGIN} data={corners(reach)} accessibilityLayer={false}>
        <CartesianGrid vertical={false} horizontalValues={LEVELS} className="chart-grid" />
        <XAxis
          type="number"
          dataKey="at"
          domain={[0, reach]}
          ticks={timeTicks(scale, reach)}
          tickFormatter={formatClock}
          height={AXIS}
          tickLine={false}
          axisLine={false}
          interval={0}
          tick={TICK}
          className="chart-axis"
        />
        <YAxis
          type="number"
          dataKey="level"
          domain={[0, 10]}
          ticks={LEVELS}
          width={0}
          interval={0}
          tick={noTick}
          tickLine={false}
          axisLine={false}
        />
        <LiveCurves reach={reach} slot={slot} />
      </ComposedChart>
    </div>
  )
})

// The grid takes its lines from the axis' ticks, so they are there and draw nothing; the labels stand beside the scroller.
const noTick = () => <g />

// The axes are given their domain; the frame still wants two corners to stand on.
const corners = (reach: Seconds) => [
  { at: 0, level: 0 },
  { at: reach, level: 10 },
]

/** Labels of the level lines, held at the left edge while the stage scrolls under them. */
export function LevelLabels() {
  const plot = HEIGHT - MARGIN.top - AXIS
  return (
    <div className="level-labels" style={{ height: HEIGHT }} aria-hidden="true">
      {LEVELS.map((level) => (
        <span key={level} style={{ top: MARGIN.top + plot * (1 - level / 10) }}>
          {level}
        </span>
      ))}
    </div>
  )
}

function LiveCurves({ reach, slot }: { reach: Seconds; slot: Seconds }) {
  const area = usePlotArea()
  const report = useApp((state) => state.shownReport)
  const selected = useApp((state) => state.selection)
  if (!area || !report) return null
  const projection: Projection = {
    x: (seconds) => area.x + (seconds / reach) * area.width,
    y: (value) => area.y + (1 - value / 10) * area.height,
  }
  return (
    <Curves report={report} projection={projection} top={area.y} bottom={area.y + area.height} selectedIds={selected.ids} slot={slot} />
  )
}

function Curves({
  report,
  projection,
  top,
  bottom,
  selectedIds,
  slot,
}: {
  report: RideReport
  projection: Projection
  top: number
  bottom: number
  selectedIds: readonly string[]
  slot: Seconds
}) {
  const { x } = projection
  return (
    <g>
      <defs>
        <linearGradient id="effort-depth" gradientUnits="userSpaceOnUse" x1="0" x2="0" y1={bottom} y2={top}>
          {Array.from({ length: 11 }, (_, level) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the levels are a fixed scale
            <stop key={level} offset={level / 10} style={{ stopColor: `var(--effort-${level})` }} />
          ))}
        </linearGradient>
      </defs>
      <path d={areaPath(report.curves.intent, projection)} fill="url(#effort-depth)" />
      <path data-curve="intent" className="curve-asked" d={linePath(report.curves.intent, projection)} />
      <RiderLines report={report} projection={projection} />
      <line className="slot-end" x1={x(slot)} x2={x(slot)} y1={top - 8} y2={bottom} />
      {report.blocks
        .filter((played) => selectedIds.includes(played.block.id) || (played.set && selectedIds.includes(played.set.set.id)))
        .map((played) => (
          <rect
            key={played.index}
            className="curve-selected"
            x={x(played.from)}
            width={Math.max(2, x(played.to) - x(played.from))}
            y={top}
            height={bottom - top}
          />
        ))}
    </g>
  )
}

/** What the ride asks of the riders shown, and what it does to them; several riders are hairlines of a band. */
function RiderLines({ report, projection }: { report: RideReport; projection: Projection }) {
  const lines = useApp((state) => state.lines)
  const shown = useApp((state) => state.shownRider)
  const riders = shownRiders(report.riders, shown)
  return (
    <g data-band={riders.length > 1 || undefined}>
      {lines.reserve && (
        <defs>
          <pattern id="reserve-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line className="curve-reserve-hatch" x1="0" x2="0" y1="0" y2="6" />
          </pattern>
        </defs>
      )}
      {riders.map((rider) => {
        const reserve = lines.reserve ? reserveRuns(rider, projection) : []
        return (
          <g key={rider.rider.id} data-rider={rider.rider.id}>
            {lines.reserve && <path fill="url(#reserve-hatch)" d={areaPath(reserve, projection)} />}
            {lines.reserve && <path data-curve="reserve" className="curve-reserve" d={linePath(reserve, projection)} />}
            {lines.demand && <path data-curve="demand" className="curve-demand" d={linePath(demandLine(rider), projection)} />}
            {lines.heart && <path data-curve="heart" className="curve-heart" d={linePath(heartRuns(rider, projection), projection)} />}
          </g>
        )
      })}
      {lines.strain && (
        <path data-curve="strain" className="curve-strain" d={linePath(strainRuns(report.curves.strain, projection), projection)} />
      )}
    </g>
  )
}
