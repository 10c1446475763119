import { type RefObject, useEffect, useLayoutEffect, useRef } from 'react'
import type { Seconds } from '#units/units.ts'
import { isInSight, turnTo } from './followHead.ts'
import { type TimeScale, toX } from './timeScale.ts'
import './playhead.css'

/**
 * Where the ride is being played. Given to `Stage` as its `playhead`, by whoever plays.
 *
 * `subscribe` calls the listener at once with the second of the class the head stands at (seconds since
 * the ride clock's zero, as all times of a report), and then as often as it likes, sixty times a second
 * or more: the head moves without React. Null where nothing is played or paused; the line is not drawn then.
 * It returns what ends the subscription. The source has to be the same object from drawing to drawing.
 */
export interface PlayheadSource {
  subscribe: (listener: (second: Seconds | null) => void) => () => void
}

/** A head that moves further than this from one call to the next has been set, not played. */
const JUMP: Seconds = 2

/**
 * The line where the ride is being played. The stage turns on with it as long as it is in sight; once
 * somebody has scrolled away from it the stage stays where they look, until the head is in sight again or is set anew.
 */
export function Playhead({
  source,
  scale,
  scroller,
}: {
  source: PlayheadSource
  scale: TimeScale
  scroller: RefObject<HTMLElement | null>
}) {
  const line = useRef<HTMLDivElement>(null)
  const head = useRef<{ second: Seconds | null; isFollowed: boolean }>({ second: null, isFollowed: true })
  const scaleNow = useRef(scale)
  scaleNow.current = scale

  useEffect(() => {
    const box = scroller.current
    const mark = line.current
    if (!box || !mark) return
    const note = () => {
      const { second } = head.current
      if (second !== null) head.current.isFollowed = isInSight(toX(scaleNow.current, second), sightOf(box))
    }
    box.addEventListener('scroll', note, { passive: true })
    const leave = source.subscribe((second) => {
      const { second: before, isFollowed } = head.current
      const isSet = second !== null && (before === null || Math.abs(second - before) > JUMP)
      head.current = { second, isFollowed: isFollowed || isSet }
      place(mark, second, scaleNow.current)
      if (second === null || !head.current.isFollowed) return
      const left = turnTo(toX(scaleNow.current, second), sightOf(box))
      if (left !== null) box.scrollLeft = left
    })
    return () => {
      leave()
      box.removeEventListener('scroll', note)
    }
  }, [source, scroller])

  useLayoutEffect(() => {
    if (line.current) place(line.current, head.current.second, scale)
  }, [scale])

  return <div ref={line} className="playhead" aria-hidden="true" hidden />
}

const sightOf = (box: HTMLElement) => ({ left: box.scrollLeft, width: box.clientWidth })

function place(line: HTMLElement, second: Seconds | null, scale: TimeScale): void {
  line.hidden = second === null
  if (second !== null) line.style.transform = `translateX(${toX(scale, second)}px)`
}
