import { createContext, memo, useContext, useMemo } from 'react'
import { CartesianGrid, ComposedChart, usePlotArea, XAxis, YAxis } from 'recharts'
import { demandLine } from '#engine/demand/demandLine.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport, RiderReport } from '#engine/report.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import type { Seconds, Stretch } from '#units/units.ts'
import { CHART, levelToY } from './chartFrame.ts'
import { areaPath, bandPath, linePath, type Projection } from './curvePath.ts'
import { reaches, runsWithin } from './drawnStretch.ts'
import { demandBand, heartBand, heartRuns, reserveBand, reserveRuns, shownRiders, strainRuns } from './riderLines.ts'
import { type TimeScale, timeTicks, toX } from './timeScale.ts'

const MARGIN = { top: CHART.top, right: 0, bottom: 0, left: 0 }
const LEVELS = [0, 2, 4, 6, 8, 10]

interface ChartProps {
  scale: TimeScale
  reach: Seconds
  slot: Seconds
  /** As much of the ride as is drawn. */
  stretch: Stretch
}

/**
 * The frame (the two axes, level lines) is Recharts' and is drawn again only when the zoom or the reach changes; the
 * labels of the time axis and the curves are children of its plot area, follow scrolling and every change of the ride,
 * and reach as far as is seen.
 */
export const IntensityChart = memo(function IntensityChart({ scale, reach, slot, stretch }: ChartProps) {
  return (
    <StretchContext.Provider value={stretch}>
      <Frame scale={scale} reach={reach} slot={slot} />
    </StretchContext.Provider>
  )
})

// Through a context, past the frame, which is not drawn again.
const StretchContext = createContext<Stretch>({ from: 0, to: 0 })

const Frame = memo(function Frame({ scale, reach, slot }: Omit<ChartProps, 'stretch'>) {
  return (
    <div className="chart" aria-hidden="true">
      <ComposedChart width={toX(scale, reach)} height={CHART.height} margin={MARGIN} data={corners(reach)} accessibilityLayer={false}>
        <CartesianGrid vertical={false} horizontalValues={LEVELS} className="chart-grid" />
        <XAxis
          type="number"
          dataKey="at"
          domain={[0, reach]}
          ticks={NO_TIMES}
          height={CHART.times}
          tickLine={false}
          axisLine={false}
          interval={0}
          tick={noTick}
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
        <TimeLabels scale={scale} reach={reach} />
        <LiveCurves reach={reach} slot={slot} />
      </ComposedChart>
    </div>
  )
})

// The grid takes its lines from the axis' ticks, so they are there and draw nothing; the labels stand beside the scroller.
const noTick = () => <g />

const NO_TIMES: number[] = []

/** Times under the curve, each beside its moment, not around it: the first one would be cut at the edge. */
function TimeLabels({ scale, reach }: { scale: TimeScale; reach: Seconds }) {
  const area = usePlotArea()
  const stretch = useContext(StretchContext)
  if (!area) return null
  return (
    <g className="chart-times">
      {timeTicks(scale, reach)
        .filter((at) => at >= stretch.from && at <= stretch.to)
        .map((at) => (
          <text key={at} x={area.x + toX(scale, at) + 3} y={area.y + area.height + 16}>
            {formatClock(at)}
          </text>
        ))}
    </g>
  )
}

// The axes are given their domain; the frame still wants two corners to stand on.
const corners = (reach: Seconds) => [
  { at: 0, level: 0 },
  { at: reach, level: 10 },
]

/** Labels of the level lines, held at the left edge while the stage scrolls under them. */
export function LevelLabels() {
  return (
    <div className="level-labels" style={{ height: CHART.height }} aria-hidden="true">
      {LEVELS.map((level) => (
        <span key={level} style={{ top: levelToY(level) }}>
          {level}
        </span>
      ))}
    </div>
  )
}

function LiveCurves({ reach, slot }: { reach: Seconds; slot: Seconds }) {
  const area = usePlotArea()
  const stretch = useContext(StretchContext)
  const report = useApp((state) => state.shownReport)
  const selected = useApp((state) => state.selection.ids)
  const projection = useMemo(() => area && projectionOf(area, reach), [area, reach])
  if (!area || !projection || !report) return null
  const { x } = projection
  const [top, bottom] = [area.y, area.y + area.height]
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
      <Asked report={report} projection={projection} stretch={stretch} />
      <RiderLines report={report} projection={projection} stretch={stretch} />
      <line className="slot-end" x1={x(slot)} x2={x(slot)} y1={top - 8} y2={bottom} />
      {report.blocks
        .filter((played) => reaches(stretch, played) && isOneOf(selected, played))
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

const projectionOf = (area: { x: number; y: number; width: number; height: number }, reach: Seconds): Projection => ({
  x: (seconds) => area.x + (seconds / reach) * area.width,
  y: (value) => area.y + (1 - value / 10) * area.height,
})

const isOneOf = (ids: readonly string[], { block, set }: PlayedBlock): boolean =>
  ids.includes(block.id) || (set !== undefined && ids.includes(set.set.id))

interface CurvesProps {
  report: RideReport
  projection: Projection
  stretch: Stretch
}

const Asked = memo(function Asked({ report, projection, stretch }: CurvesProps) {
  const runs = runsWithin(report.curves.intent, stretch)
  return (
    <>
      <path d={areaPath(runs, projection)} fill="url(#effort-depth)" />
      <path data-curve="intent" className="curve-asked" d={linePath(runs, projection)} />
    </>
  )
})

interface BandsProps extends Omit<CurvesProps, 'report'> {
  rider: RiderReport
}

/** How far off the lines of one rider may be: nine of ten such riders on such bikes lie inside. */
function RiderBands({ rider, projection, stretch }: BandsProps) {
  const lines = useApp((state) => state.lines)
  const bands = {
    ...(lines.reserve && { reserve: reserveBand(rider, projection, stretch) }),
    ...(lines.demand && { demand: demandBand(rider, stretch) }),
    ...(lines.heart && { heart: heartBand(rider, projection, stretch) }),
  }
  return Object.entries(bands).map(([line, { low, high }]) => (
    <path key={line} data-band-of={line} className={`curve-band curve-band-${line}`} d={bandPath(low, high, projection)} />
  ))
}

/** What the ride asks of the riders shown, and what it does to them; several riders are hairlines of a band. */
const RiderLines = memo(function RiderLines({ report, projection, stretch }: CurvesProps) {
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
      {riders.length === 1 && <RiderBands rider={riders[0]!} projection={projection} stretch={stretch} />}
      {riders.map((rider) => {
        const reserve = lines.reserve ? reserveRuns(rider, projection, stretch) : []
        return (
          <g key={rider.rider.id} data-rider={rider.rider.id}>
            {lines.reserve && <path fill="url(#reserve-hatch)" d={areaPath(reserve, projection)} />}
            {lines.reserve && <path data-curve="reserve" className="curve-reserve" d={linePath(reserve, projection)} />}
            {lines.demand && (
              <path data-curve="demand" className="curve-demand" d={linePath(runsWithin(demandLine(rider), stretch), projection)} />
            )}
            {lines.heart && (
              <path data-curve="heart" className="curve-heart" d={linePath(heartRuns(rider, projection, stretch), projection)} />
            )}
          </g>
        )
      })}
      {lines.strain && (
        <path
          data-curve="strain"
          className="curve-strain"
          d={linePath(strainRuns(report.curves.strain, projection, stretch), projection)}
        />
      )}
    </g>
  )
})
