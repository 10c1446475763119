import { type CSSProperties, type PointerEvent, useMemo, useRef } from 'react'
import { useApp } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import { clock } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { areaPath, linePath, type Projection } from './curvePath.ts'
import type { WindowEdge } from './gestures/windowPull.ts'
import { EDGE_STRIDE, strideOf } from './overviewKeys.ts'
import { heartRuns, shownRiders } from './riderLines.ts'

const HEIGHT = 56

interface OverviewProps {
  reach: Seconds
  /** What the stage shows. */
  from: Seconds
  to: Seconds
  /** Brings a second to the middle of the stage. */
  onGo: (middle: Seconds) => void
  /** Has the stage begin or end at a second, with its other side where it is. */
  onPull: (edge: WindowEdge, at: Seconds) => void
}

/**
 * The whole ride small, with a window on the stretch the stage shows. A press brings that place to the middle of the stage,
 * pulling the window moves it, and pulling an edge of it zooms; arrow keys do the same.
 */
export function Overview({ reach, from, to, onGo, onPull }: OverviewProps) {
  const report = useApp((state) => state.shownReport)
  const box = useRef<HTMLDivElement>(null)
  const held = useRef<{ edge: WindowEdge | null; off: Seconds; x: number; hasTravelled: boolean } | null>(null)
  const paths = useMemo(() => {
    if (!report) return null
    const projection: Projection = { x: (seconds) => (seconds / reach) * 1000, y: (value) => HEIGHT - 2 - (value / 10) * (HEIGHT - 6) }
    const [rider] = shownRiders(report.riders, 'reference')
    return { area: areaPath(report.curves.intent, projection), heart: rider ? linePath(heartRuns(rider, projection), projection) : '' }
  }, [report, reach])
  if (!report || !paths) return null

  const secondAt = (event: PointerEvent): Seconds => {
    const bounds = box.current!.getBoundingClientRect()
    return ((event.clientX - bounds.left) / bounds.width) * reach
  }
  const move = (event: PointerEvent) => {
    if (!held.current) return
    const { edge, off, x } = held.current
    held.current.hasTravelled ||= Math.abs(event.clientX - x) >= TRAVEL
    if (!held.current.hasTravelled) return
    if (edge) onPull(edge, secondAt(event) + off)
    else onGo(secondAt(event) + off)
  }
  const press = (event: PointerEvent) => {
    if (event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    const at = secondAt(event)
    const edge = (event.target as HTMLElement).dataset.edge as WindowEdge | undefined
    // What is taken hold of stays under the pointer as it lies; beside it, the window comes to the pointer.
    const isWindow = (event.target as Element).closest('.overview-window, .overview-edge') !== null
    const grip = edge === 'from' ? from : edge === 'to' ? Math.min(to, reach) : (from + to) / 2
    held.current = { edge: edge ?? null, off: isWindow ? grip - at : 0, x: event.clientX, hasTravelled: !isWindow }
    if (!isWindow) move(event)
  }
  const share = (seconds: Seconds) => `${(100 * Math.min(reach, Math.max(0, seconds))) / reach}%`
  return (
    <div
      ref={box}
      className="overview"
      onPointerDown={press}
      onPointerMove={move}
      onPointerUp={(event) => {
        if (held.current && !held.current.hasTravelled && !held.current.edge) onGo(secondAt(event))
        held.current = null
      }}
      onPointerCancel={() => {
        held.current = null
      }}
    >
      <svg viewBox={`0 0 1000 ${HEIGHT}`} preserveAspectRatio="none" aria-hidden="true" height={HEIGHT}>
        <defs>
          <linearGradient id="effort-depth-small" gradientUnits="userSpaceOnUse" x1="0" x2="0" y1={HEIGHT - 2} y2="4">
            {Array.from({ length: 11 }, (_, level) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the levels are a fixed scale
              <stop key={level} offset={level / 10} style={{ stopColor: `var(--effort-${level})` }} />
            ))}
          </linearGradient>
        </defs>
        <path d={paths.area} fill="url(#effort-depth-small)" />
        <path d={paths.heart} className="curve-heart" vectorEffect="non-scaling-stroke" />
        {report.sections.slice(1).map((section) => (
          <line
            key={section.sectionId}
            className="overview-joint"
            x1={(section.from / reach) * 1000}
            x2={(section.from / reach) * 1000}
            y1={0}
            y2={HEIGHT}
          />
        ))}
      </svg>
      <span className="overview-slot" style={{ left: share(report.overall.slot) }} />
      <div
        role="slider"
        tabIndex={0}
        aria-label={words.drafting.overview}
        aria-valuemin={0}
        aria-valuemax={Math.round(reach)}
        aria-valuenow={Math.round((from + to) / 2)}
        aria-valuetext={words.drafting.overviewAt({ from: from / 60, to: to / 60 })}
        className="overview-window"
        style={{ left: share(from), right: `calc(100% - ${share(to)})` }}
        onKeyDown={(event) => {
          const stride = strideOf(event.key)
          if (stride === null) return
          event.preventDefault()
          onGo((from + to) / 2 + (stride * (to - from)) / 4)
        }}
      />
      {EDGES.map((edge) => {
        const at = Math.min(reach, edge === 'from' ? from : to)
        return (
          <div
            key={edge}
            role="slider"
            tabIndex={0}
            className="overview-edge"
            data-edge={edge}
            aria-label={words.gestures.overviewEdge({ edge })}
            aria-valuemin={0}
            aria-valuemax={Math.round(reach)}
            aria-valuenow={Math.round(at)}
            aria-valuetext={clock(at)}
            title={words.gestures.overviewEdgeTitle}
            style={{ '--at': share(at), '--quarter': `${(25 * Math.min(reach, to - from)) / reach}%` } as CSSProperties}
            onKeyDown={(event) => {
              const stride = strideOf(event.key)
              if (stride === null) return
              event.preventDefault()
              onPull(edge, at + stride * (to - from) * EDGE_STRIDE)
            }}
          />
        )
      })}
    </div>
  )
}

const EDGES = ['from', 'to'] as const

/** Pixels a press has to travel before it pulls. */
const TRAVEL = 3
