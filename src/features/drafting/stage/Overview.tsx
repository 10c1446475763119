import { type PointerEvent, useMemo, useRef } from 'react'
import { useApp } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'
import { areaPath, linePath, type Projection } from './curvePath.ts'
import { strideOf } from './overviewKeys.ts'
import { heartRuns, shownRiders } from './riderLines.ts'

const HEIGHT = 56

/**
 * The whole ride small, with a window on the stretch the stage shows. Pressing or pulling brings that
 * place to the middle of the stage; the arrow keys on the window do the same.
 */
export function Overview({ reach, from, to, onGo }: { reach: Seconds; from: Seconds; to: Seconds; onGo: (middle: Seconds) => void }) {
  const report = useApp((state) => state.shownReport)
  const box = useRef<HTMLDivElement>(null)
  const paths = useMemo(() => {
    if (!report) return null
    const projection: Projection = { x: (seconds) => (seconds / reach) * 1000, y: (value) => HEIGHT - 2 - (value / 10) * (HEIGHT - 6) }
    const [rider] = shownRiders(report.riders, 'reference')
    return { area: areaPath(report.curves.intent, projection), heart: rider ? linePath(heartRuns(rider, projection), projection) : '' }
  }, [report, reach])
  if (!report || !paths) return null

  const go = (event: PointerEvent) => {
    const bounds = box.current!.getBoundingClientRect()
    onGo(((event.clientX - bounds.left) / bounds.width) * reach)
  }
  const share = (seconds: Seconds) => `${(100 * Math.min(reach, Math.max(0, seconds))) / reach}%`
  return (
    <div
      ref={box}
      className="overview"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId)
        go(event)
      }}
      onPointerMove={(event) => {
        if (event.currentTarget.hasPointerCapture(event.pointerId)) go(event)
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
    </div>
  )
}
