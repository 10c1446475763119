import { useDroppable } from '@dnd-kit/core'
import {
  lazy,
  type MouseEvent,
  memo,
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
import type { PlayedBlock, RideReport, Span } from '#engine/report.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEights } from '#units/formatEights.ts'
import type { Seconds } from '#units/units.ts'
import { BlockCard, speakBlock } from './BlockCard.tsx'
import { DragHandle } from './drag/DragHandle.tsx'
import { Overview } from './Overview.tsx'
import { SongRow } from './SongRow.tsx'
import { StageContext } from './StageContext.ts'
import { clampZoom, stageReach, type TimeScale, toSeconds, toX, ZOOM, zoomToFit } from './timeScale.ts'
import { useKeptView } from './useKeptView.ts'

// The chart library is large and the blocks are what one starts with: it comes after the first paint.
const IntensityChart = lazy(() => import('./IntensityChart.tsx').then((module) => ({ default: module.IntensityChart })))
const LevelLabels = lazy(() => import('./IntensityChart.tsx').then((module) => ({ default: module.LevelLabels })))

export interface StageProps {
  readOnly: boolean
  draggedId: string | null
  onSelectSection: (sectionId: string) => void
  onSelectItem: (id: string, event: { shiftKey: boolean; ctrlKey: boolean; metaKey: boolean }) => void
  scale: TimeScale
  onScale: (scale: TimeScale) => void
  lane: RefObject<HTMLDivElement | null>
  ref?: Ref<StageView>
}

/** What others may ask of the view. */
export interface StageView {
  fitRide: () => void
  fitSection: (sectionId: string) => void
  zoomBy: (factor: number) => void
  /** Brings a stretch into sight, with the least movement. */
  reveal: (from: Seconds, to: Seconds) => void
}

/** One time axis, three rows: the curve, the songs with their rulers, the blocks. Scrolled sideways as one. */
export function Stage({ readOnly, draggedId, onSelectSection, onSelectItem, scale, onScale, lane, ref }: StageProps) {
  const ride = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const selection = useApp((state) => state.selection)
  const scroller = useRef<HTMLDivElement>(null)
  const [windowed, setWindowed] = useState({ left: 0, width: 1000 })
  const anchor = useRef<{ seconds: Seconds; x: number } | null>(null)

  const measure = useCallback(() => {
    const box = scroller.current
    if (box)
      setWindowed((now) =>
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
      anchor.current = { seconds, x }
      if (next === scale.pixelsPerSecond && scroller.current) scroller.current.scrollLeft = toX(scale, seconds) - x
      else onScale({ pixelsPerSecond: next })
    },
    [onScale, scale],
  )

  useKeptView(scroller, windowed, scale, zoomTo)

  // The browser's own zoom would win unless the wheel is caught before it, which React's passive listeners cannot.
  useLayoutEffect(() => {
    const box = scroller.current
    if (!box) return
    const wheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey) return
      event.preventDefault()
      const x = event.clientX - box.getBoundingClientRect().left
      zoomTo(scale.pixelsPerSecond * Math.exp(-event.deltaY / 300), toSeconds(scale, box.scrollLeft + x), x)
    }
    box.addEventListener('wheel', wheel, { passive: false })
    return () => box.removeEventListener('wheel', wheel)
  }, [scale, zoomTo])

  const fitSection = useCallback(
    (sectionId: string) => {
      const section = report?.sections.find((other) => other.sectionId === sectionId)
      const width = scroller.current?.clientWidth ?? 1000
      if (section) zoomTo(zoomToFit(width - 2 * EDGE, section.to - section.one), section.one, EDGE)
    },
    [report, zoomTo],
  )

  useImperativeHandle(ref, () => {
    const box = () => scroller.current!
    return {
      fitRide: () => report && zoomTo(zoomToFit(box().clientWidth, Math.max(report.totals.total, 60)), 0, 0),
      fitSection,
      zoomBy: (factor) => {
        const middle = box().clientWidth / 2
        zoomTo(scale.pixelsPerSecond * factor, toSeconds(scale, box().scrollLeft + middle), middle)
      },
      reveal: (from, to) => {
        const left = toX(scale, from) - EDGE
        const right = toX(scale, to) + EDGE - box().clientWidth
        if (box().scrollLeft > left) box().scrollLeft = left
        else if (box().scrollLeft < right) box().scrollLeft = Math.min(left, right)
      },
    }
  }, [report, scale, zoomTo, fitSection])

  const ground = useMemo(() => ({ lane, scale }), [lane, scale])
  const { setNodeRef } = useDroppable({ id: 'stage' })
  if (!ride || !report) return null
  const reach = stageReach(report.totals.total, report.totals.slot)
  return (
    <StageContext.Provider value={ground}>
      <Overview
        reach={reach}
        from={toSeconds(scale, windowed.left)}
        to={toSeconds(scale, windowed.left + windowed.width)}
        onGo={(middle) => {
          if (scroller.current) scroller.current.scrollLeft = toX(scale, middle) - windowed.width / 2
        }}
      />
      <div className="stage">
        <Suspense fallback={null}>
          <LevelLabels />
        </Suspense>
        <div
          className="stage-scroller"
          ref={(node) => {
            scroller.current = node
            setNodeRef(node)
          }}
          onScroll={measure}
        >
          <div className="stage-content" ref={lane} style={{ width: toX(scale, reach) }}>
            <div className="chart-place">
              <Suspense fallback={<p className="chart-wait">drawing the curve …</p>}>
                <IntensityChart scale={scale} reach={reach} slot={report.totals.slot} />
              </Suspense>
            </div>
            <Songs
              ride={ride}
              report={report}
              scale={scale}
              selectedId={selection.sectionId}
              single={selection.ids.length === 0}
              onSelect={onSelectSection}
              onFit={fitSection}
            />
            <Blocks
              ride={ride}
              report={report}
              scale={scale}
              selectedIds={selection.ids}
              draggedId={draggedId}
              readOnly={readOnly}
              onSelect={onSelectItem}
            />
          </div>
        </div>
      </div>
    </StageContext.Provider>
  )
}

function Songs({
  ride,
  report,
  scale,
  selectedId,
  single,
  onSelect,
  onFit,
}: {
  ride: Ride
  report: RideReport
  scale: TimeScale
  selectedId: string | null
  single: boolean
  onSelect: (id: string) => void
  onFit: (id: string) => void
}) {
  const stop = ride.sections.some((section) => section.id === selectedId) ? selectedId : ride.sections[0]?.id
  return (
    <div className="songs">
      {ride.sections.map((section, i) => (
        <SongRow
          key={section.id}
          section={section}
          report={report.sections[i]!}
          number={i + 1}
          scale={scale}
          selected={single && section.id === selectedId}
          focusable={section.id === stop}
          onSelect={onSelect}
          onFit={onFit}
        />
      ))}
    </div>
  )
}

interface BlocksProps {
  ride: Ride
  report: RideReport
  scale: TimeScale
  selectedIds: readonly string[]
  draggedId: string | null
  readOnly: boolean
  onSelect: StageProps['onSelectItem']
}

/** All blocks in one row of their own: a block keeps its element while it moves from song to song. */
const Blocks = memo(function Blocks({ ride, report, scale, selectedIds, draggedId, readOnly, onSelect }: BlocksProps) {
  const stop = report.blocks.find((played) => selectedIds.includes(played.block.id))?.index ?? 0
  const select = (event: MouseEvent) => {
    const target = (event.target as Element).closest<HTMLElement>('[data-stage-stop="block"], [data-stage-stop="set"]')
    if (target?.dataset.id) onSelect(target.dataset.id, event)
  }
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keys of the stage are handled on the stage as a whole
    <div
      className="blocks"
      role="listbox"
      aria-multiselectable="true"
      aria-label="blocks in playing order"
      aria-orientation="horizontal"
      tabIndex={-1}
      onClick={select}
    >
      {report.blocks.map((played) => (
        <BlockCard
          key={`${played.block.id}:${played.set?.round ?? 1}`}
          {...cardProps(played, report, scale)}
          selected={selectedIds.includes(played.block.id) || (played.set !== undefined && selectedIds.includes(played.set.set.id))}
          dragged={draggedId === played.block.id || draggedId === played.set?.set.id}
          focusable={played.index === stop}
          readOnly={readOnly}
        />
      ))}
      {report.blocks.length === 0 && !readOnly && (
        <p className="stage-empty">An empty ride. Press a pattern below or drag it up here, and add a section for each song.</p>
      )}
      {report.spans.map((span) => (
        <Rest key={`${span.kind} ${span.from}`} span={span} scale={scale} />
      ))}
      {ride.sections
        .flatMap((section) => section.blocks.filter(isSet))
        .map((set) => (
          <SetBracket
            key={set.id}
            id={set.id}
            rounds={set.rounds}
            label={set.label}
            report={report}
            scale={scale}
            selected={selectedIds.includes(set.id)}
          />
        ))}
    </div>
  )
})

function cardProps(played: PlayedBlock, report: RideReport, scale: TimeScale) {
  const section = report.sections[played.section]!
  const counts = played.countFrom === undefined || played.countTo === undefined ? null : played.countTo - played.countFrom
  const length = counts === null ? formatDuration(played.to - played.from) : formatEights(counts, section.unit.eight)
  return {
    block: played.block,
    index: played.index,
    round: played.set?.round ?? 1,
    rounds: played.set?.set.rounds ?? 1,
    x: Math.round(toX(scale, played.from) * 10) / 10,
    width: Math.round(toX(scale, played.to - played.from) * 10) / 10,
    total: played.ledger.total,
    change: played.ledger.change,
    length,
    crooked: counts !== null && counts % section.unit.eight !== 0,
    beyond: played.beyond > 0,
    spoken: speakBlock(played, formatClock(played.from), length),
  }
}

const REST_WORDS = { openTail: 'open', briefing: 'briefing', clearUp: 'clear-up' } as const

/** Time that no block fills: the words before the first song, a song's open end, the wiping down. */
function Rest({ span, scale }: { span: Span; scale: TimeScale }) {
  if (span.kind === 'block' || span.kind === 'leadIn') return null
  const width = toX(scale, span.to - span.from)
  if (width < 3) return null
  return (
    <div className="rest" data-kind={span.kind} style={{ transform: `translateX(${toX(scale, span.from)}px)`, width: width - 2 }}>
      {width > 40 && `${REST_WORDS[span.kind]} ${formatDuration(span.to - span.from)}`}
    </div>
  )
}

/** The bracket over a set's rounds: its handle for picking the set up as a whole. */
function SetBracket({
  id,
  rounds,
  label,
  report,
  scale,
  selected,
}: {
  id: string
  rounds: number
  label?: string | undefined
  report: RideReport
  scale: TimeScale
  selected: boolean
}) {
  const set = report.sets.find((other) => other.setId === id)
  if (!set) return null
  const words = `${label ? `${label}, ` : ''}${rounds} ${rounds === 1 ? 'round' : 'rounds'}`
  return (
    <div
      className="set"
      data-selected={selected || undefined}
      style={{ transform: `translateX(${toX(scale, set.from)}px)`, width: toX(scale, set.to - set.from) - 2 }}
    >
      <DragHandle kind="set" id={id}>
        <button
          type="button"
          className="set-head"
          data-stage-stop="set"
          data-id={id}
          tabIndex={selected ? 0 : -1}
          aria-pressed={selected}
          title={words}
        >
          {words}
        </button>
      </DragHandle>
    </div>
  )
}

/** Pixels left free at the side of what is brought into sight. */
const EDGE = 24

export const OPENING_SCALE: TimeScale = { pixelsPerSecond: ZOOM.opening }
