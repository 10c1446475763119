import { useDroppable } from '@dnd-kit/core'
import {
  lazy,
  type MouseEvent,
  type ReactNode,
  type Ref,
  type RefObject,
  Suspense,
  useCallback,
  useImperativeHandle,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react'
import { useApp } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'
import { BlockLane, type SelectItem } from './BlockLane.tsx'
import { drawnStretch } from './drawnStretch.ts'
import type { Sight } from './followHead.ts'
import type { ZoomedTo } from './gestures/pinchZoom.ts'
import { pulledWindow } from './gestures/windowPull.ts'
import { Overview } from './Overview.tsx'
import { Playhead, type PlayheadSource } from './Playhead.tsx'
import { SongLane } from './SongLane.tsx'
import { StageContext } from './StageContext.ts'
import { TalkLane } from './TalkLane.tsx'
import { clampZoom, stageReach, type TimeScale, toSeconds, toX, ZOOM, zoomToFit } from './timeScale.ts'
import { useKeptView } from './useKeptView.ts'
import { useWheelZoom } from './useWheelZoom.ts'
import './stage.css'

// The chart library is large and the blocks are what one starts with: it comes after the first paint.
const IntensityChart = lazy(() => import('./IntensityChart.tsx').then((module) => ({ default: module.IntensityChart })))
const ReadOut = lazy(() => import('./readOut/ReadOut.tsx').then((module) => ({ default: module.ReadOut })))
const LevelLabels = lazy(() => import('./IntensityChart.tsx').then((module) => ({ default: module.LevelLabels })))
// What hands do to the stage as a whole comes with it, over what is read of it.
const Gestures = lazy(() => import('./gestures/Gestures.tsx').then((module) => ({ default: module.Gestures })))

interface StageProps {
  readOnly: boolean
  draggedId: string | null
  onSelectSection: (sectionId: string) => void
  onSelectItem: SelectItem
  /** A press on the stage beside blocks and songs is about the ride itself. */
  onSelectRide: () => void
  scale: TimeScale
  onScale: (scale: TimeScale) => void
  lane: RefObject<HTMLDivElement | null>
  /** Draws a line where the ride is being played, and keeps it in sight; none without it. */
  playhead?: PlayheadSource | undefined
  /** Told the second of the class when the background of the curve or a song's ruler is pressed; such presses do nothing without it. */
  onSeek?: ((second: Seconds) => void) | undefined
  ref?: Ref<StageView>
  /** What lies over it and moves with it. */
  children?: ReactNode
}

/** What others may ask of the view. */
export interface StageView {
  fitRide: () => void
  fitSection: (sectionId: string) => void
  zoomBy: (factor: number) => void
  /** Brings a stretch into sight, with the least movement. */
  reveal: (from: Seconds, to: Seconds) => void
  /** Brings the stage itself back into sight, for those who have scrolled down from it. */
  comeIntoSight: () => void
}

/** One time axis, three rows: the curve, the songs with their rulers, the blocks. Scrolled sideways as one. */
export function Stage(props: StageProps) {
  const { readOnly, draggedId, onSelectSection, onSelectItem, onSelectRide, scale, onScale, lane, playhead, onSeek, ref, children } = props
  const ride = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const selection = useApp((state) => state.selection)
  const scroller = useRef<HTMLDivElement>(null)
  const [sight, setSight] = useState<Sight>({ left: 0, width: 1000 })
  const anchor = useRef<{ seconds: Seconds; x: number } | null>(null)
  // What handlers need of the last drawing: reading it here keeps them the same from change to change.
  const latest = useRef({ report, scale, sight })
  latest.current = { report, scale, sight }

  const measure = useCallback(() => {
    const box = scroller.current
    if (box)
      setSight((now) =>
        now.left === box.scrollLeft && now.width === box.clientWidth ? now : { left: box.scrollLeft, width: box.clientWidth },
      )
  }, [])

  // Zooming keeps the anchored second where it stands on the screen.
  useLayoutEffect(() => {
    const box = scroller.current
    if (box && anchor.current) {
      box.scrollLeft = toX(scale, anchor.current.seconds) - anchor.current.x
      anchor.current = null
    }
    measure()
  }, [scale, measure])

  useLayoutEffect(() => {
    const box = scroller.current
    if (!box) return
    const observer = new ResizeObserver(measure)
    observer.observe(box)
    return () => observer.disconnect()
  }, [measure])

  const zoomTo = useCallback(
    (pixelsPerSecond: number, seconds: Seconds, x: number) => {
      const next = clampZoom(pixelsPerSecond)
      const { scale: now } = latest.current
      if (next === now.pixelsPerSecond && scroller.current) {
        scroller.current.scrollLeft = toX(now, seconds) - x
        return
      }
      anchor.current = { seconds, x }
      const nextScale = { pixelsPerSecond: next }
      // Where the stage is going to stand, so that the right stretch is drawn at once.
      setSight(({ width }) => ({ left: Math.max(0, Math.round(toX(nextScale, seconds) - x)), width }))
      onScale(nextScale)
    },
    [onScale],
  )

  useKeptView(scroller, sight, scale, zoomTo)

  useWheelZoom(scroller, zoomTo, latest)

  const zoomAt = useCallback(({ pixelsPerSecond, seconds, x }: ZoomedTo) => zoomTo(pixelsPerSecond, seconds, x), [zoomTo])

  const fitSection = useCallback(
    (sectionId: string) => {
      const section = latest.current.report?.sections.find((other) => other.sectionId === sectionId)
      const width = scroller.current?.clientWidth ?? 1000
      if (section) zoomTo(zoomToFit(width - 2 * EDGE, section.to - section.one), section.one, EDGE)
    },
    [zoomTo],
  )

  useImperativeHandle(ref, () => {
    const box = () => scroller.current!
    return {
      fitRide: () => {
        const { report: shown } = latest.current
        if (shown) zoomTo(zoomToFit(box().clientWidth, Math.max(shown.overall.total, 60)), 0, 0)
      },
      fitSection,
      zoomBy: (factor) => {
        const { scale: now } = latest.current
        const middle = box().clientWidth / 2
        zoomTo(now.pixelsPerSecond * factor, toSeconds(now, box().scrollLeft + middle), middle)
      },
      reveal: (from, to) => {
        // Asked of what is known: the page would have to be laid out to answer.
        const { scale: now, sight: seen } = latest.current
        const left = toX(now, from) - EDGE
        const right = toX(now, to) + EDGE - seen.width
        if (seen.left >= right && seen.left <= left) return
        box().scrollLeft = seen.left > left ? left : Math.min(left, right)
        measure()
      },
      comeIntoSight: () => box().parentElement!.scrollIntoView({ block: 'nearest' }),
    }
  }, [zoomTo, fitSection, measure])

  const press = (event: MouseEvent) => {
    if (event.defaultPrevented) return
    const pressed = event.target as Element
    if (onSeek && lane.current && isSeekPlace(pressed)) {
      const x = event.clientX - lane.current.getBoundingClientRect().left
      onSeek(Math.max(0, toSeconds(scale, x)))
    } else if (!pressed.closest(TAKEN)) {
      const song = pressed.closest<HTMLElement>('.song')?.dataset.sectionId
      if (song) onSelectSection(song)
      else onSelectRide()
    }
  }

  const drawn = drawnStretch(sight, scale)
  const [from, to] = [drawn.from, drawn.to]
  const stretch = useMemo(() => ({ from, to }), [from, to])
  const ground = useMemo(() => ({ lane, scroller, scale }), [lane, scale])
  const { setNodeRef } = useDroppable({ id: 'stage' })
  // What is inside the scroller, and not the scroller itself: the drag library scrolls what a place to drop stands in.
  const holdLane = useCallback(
    (node: HTMLDivElement | null) => {
      lane.current = node
      setNodeRef(node)
    },
    [lane, setNodeRef],
  )
  if (!ride || !report) return null
  const reach = stageReach(report.overall.total, report.overall.slot)
  return (
    <StageContext.Provider value={ground}>
      <Overview
        reach={reach}
        from={toSeconds(scale, sight.left)}
        to={toSeconds(scale, sight.left + sight.width)}
        onGo={(middle) => {
          if (scroller.current) scroller.current.scrollLeft = toX(scale, middle) - sight.width / 2
        }}
        onPull={(edge, at) => {
          const seen = { from: toSeconds(scale, sight.left), to: toSeconds(scale, sight.left + sight.width) }
          zoomAt(pulledWindow(seen, edge, at, sight.width, reach))
        }}
      />
      <div className="stage">
        <Suspense fallback={null}>
          <LevelLabels />
        </Suspense>
        <div className="stage-scroller" ref={scroller} onScroll={measure}>
          {/* biome-ignore lint/a11y/noStaticElementInteractions: short cuts for the pointer; each has a key or a field of its own */}
          {/* biome-ignore lint/a11y/useKeyWithClickEvents: as above */}
          <div
            className="stage-content"
            ref={holdLane}
            style={{ width: toX(scale, reach) }}
            data-seekable={onSeek !== undefined || undefined}
            onClick={press}
          >
            <div className="chart-place">
              <Suspense fallback={<p className="chart-wait">{words.drafting.drawing}</p>}>
                <IntensityChart scale={scale} reach={reach} slot={report.overall.slot} stretch={stretch} />
                <ReadOut scale={scale}>
                  <Gestures scroller={scroller} zoomTo={zoomAt} />
                </ReadOut>
              </Suspense>
            </div>
            <SongLane
              ride={ride}
              report={report}
              scale={scale}
              stretch={stretch}
              selectedId={selection.sectionId}
              single={selection.ids.length === 0}
              onSelect={onSelectSection}
              onFit={fitSection}
            />
            <BlockLane
              ride={ride}
              report={report}
              scale={scale}
              stretch={stretch}
              selectedIds={selection.ids}
              draggedId={draggedId}
              readOnly={readOnly}
              onSelect={onSelectItem}
              onSelectSection={onSelectSection}
            />
            <TalkLane cues={report.cues} scale={scale} stretch={stretch} />
            {children}
            {playhead && <Playhead source={playhead} scale={scale} scroller={scroller} />}
          </div>
        </div>
      </div>
    </StageContext.Provider>
  )
}

/** The curve and a song's ruler stand for a time and for nothing else. */
const isSeekPlace = (pressed: Element): boolean =>
  pressed.closest('.chart-place') !== null || (pressed.closest('.song') !== null && pressed.closest('.song-head') === null)

/** What answers a press itself. */
const TAKEN = '[data-stage-stop], [data-open-section], .edge, button, .rename-field'

/** Pixels left free at the side of what is brought into sight. */
const EDGE = 24

export const OPENING_SCALE: TimeScale = { pixelsPerSecond: ZOOM.opening }
