import { type KeyboardEvent, type MouseEvent, type ReactNode, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { ledClass } from '#engine/leading/ledClass.ts'
import { eightFrom } from '#engine/readOut/eightFrom.ts'
import { shownRiders } from '#features/drafting/stage/riderLines.ts'
import { type TimeScale, toSeconds, toX } from '#features/drafting/stage/timeScale.ts'
import { useApp } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'
import { readKey } from './readOutKeys.ts'
import { readOutWords } from './readOutWords.ts'
import './readOut.css'

/** A class that goes as planned. */
const AS_PLANNED = { slotFrom: 0, startedAt: 0, events: [] }

/** Where the read-out stands, and what holds it there: a mouse until it leaves, keys and fingers until something else is meant. */
type Held = { at: Seconds; by: 'mouse' | 'finger' | 'key' } | null

/**
 * What the chart says at one moment: a line, and its figures beside it. The mouse shows it by pointing, a
 * finger by a touch, the keys as a slider that a screen reader reads out. It lies over the chart and lets presses through.
 *
 * @param children what lies over it and is pointed through as well
 */
export function ReadOut({ scale, children }: { scale: TimeScale; children: ReactNode }) {
  const ride = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const whose = useApp((state) => state.shownRider)
  const [held, setHeld] = useState<Held>(null)
  const root = useRef<HTMLDivElement>(null)
  const box = useRef<HTMLDivElement>(null)
  const line = useRef<HTMLDivElement>(null)
  const isHeld = held !== null
  const led = useMemo(() => (isHeld && ride && report ? ledClass({ ride, report }, AS_PLANNED) : null), [isHeld, ride, report])
  const total = report?.overall.total ?? 0
  const at = held && Math.min(held.at, total)
  const rider = report ? shownRiders(report.riders, whose === 'all' ? 'reference' : whose)[0] : undefined
  const told = useMemo(() => (led && at !== null ? readOutWords(led, rider, at) : null), [led, rider, at])

  // A finger leaves nothing behind to say that it is elsewhere now.
  const byFinger = held?.by === 'finger'
  useEffect(() => {
    if (!byFinger) return
    const leave = (event: PointerEvent) => {
      if (!root.current?.contains(event.target as Node)) setHeld(null)
    }
    document.addEventListener('pointerdown', leave)
    return () => document.removeEventListener('pointerdown', leave)
  }, [byFinger])

  // Beside its line where there is room, and always in sight.
  useLayoutEffect(() => {
    const scroller = root.current?.closest('.stage-scroller')
    if (at === null || !scroller || !box.current || !line.current) return
    if (held?.by === 'key') line.current.scrollIntoView({ block: 'nearest', inline: 'nearest' })
    const x = toX(scale, at)
    const [sight, room, width] = [scroller.scrollLeft, scroller.clientWidth, box.current.offsetWidth]
    const beside = x + GAP + width > sight + room ? x - GAP - width : x + GAP
    box.current.style.left = `${Math.max(sight, Math.min(beside, sight + room - width))}px`
    // The box is as wide as its words.
    void told
  }, [at, scale, held?.by, told])

  if (!report) return null
  const point = (event: MouseEvent, by: 'mouse' | 'finger') => {
    const x = event.clientX - root.current!.getBoundingClientRect().left
    setHeld({ at: Math.min(total, Math.max(0, toSeconds(scale, x))), by })
  }
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && held) {
      event.stopPropagation()
      setHeld(null)
      return
    }
    if (!ride) return
    const plan = led ?? ledClass({ ride, report }, AS_PLANNED)
    const next = readKey(event.key, at ?? firstSeen(root.current, scale), report, (moment, way) => eightFrom(plan, moment, way))
    if (next === null) return
    event.preventDefault()
    setHeld({ at: next, by: 'key' })
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys do the same on the slider in it
    // biome-ignore lint/a11y/useKeyWithClickEvents: as above
    <div
      ref={root}
      className="read-out-layer"
      onPointerMove={(event) => {
        if (event.pointerType !== 'touch' && event.buttons === 0) point(event, 'mouse')
      }}
      onPointerLeave={() => setHeld((now) => (now?.by === 'mouse' ? null : now))}
      onClick={(event) => {
        if ((event.nativeEvent as PointerEvent).pointerType === 'touch') point(event, 'finger')
      }}
    >
      <div
        className="read-out"
        role="slider"
        tabIndex={0}
        aria-label={words.readOut.name}
        aria-valuemin={0}
        aria-valuemax={Math.round(total)}
        aria-valuenow={Math.round(at ?? 0)}
        aria-valuetext={told?.spoken ?? words.readOut.nothing}
        onKeyDown={press}
        onFocus={(event) => {
          if (event.currentTarget.matches(':focus-visible')) setHeld((now) => now ?? { at: firstSeen(root.current, scale), by: 'key' })
        }}
        onBlur={() => setHeld((now) => (now?.by === 'key' ? null : now))}
      />
      {at !== null && told && (
        <>
          <div ref={line} className="read-out-line" style={{ left: toX(scale, at) }} />
          <div ref={box} className="read-out-box" data-read-out={held?.by}>
            <p className="read-out-place">{told.place}</p>
            <p>{told.block}</p>
            <dl>
              {told.rows.map(({ what, value }) => (
                <div key={what}>
                  <dt>{what}</dt>
                  <dd>{value}</dd>
                </div>
              ))}
            </dl>
            {told.whose && <p className="read-out-whose">{told.whose}</p>}
          </div>
        </>
      )}
      {children}
    </div>
  )
}

/** Pixels between the line and what is said of it. */
const GAP = 10

/** The first whole second in sight. */
const firstSeen = (root: HTMLElement | null, scale: TimeScale): Seconds =>
  Math.ceil(toSeconds(scale, root?.closest('.stage-scroller')?.scrollLeft ?? 0))
