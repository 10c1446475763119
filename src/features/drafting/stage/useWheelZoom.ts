import { type RefObject, useLayoutEffect } from 'react'
import type { Seconds } from '#units/units.ts'
import { type TimeScale, toSeconds } from './timeScale.ts'
import { zoomOfWheel } from './zoomWheel.ts'

/**
 * Zooms with the wheel while a key is held, and with two fingers on a pad, at the pointer. As long as it rests in one place,
 * the very same second stays under it, however many steps there are: pixels that are rounded away do not add up.
 */
export function useWheelZoom(
  scroller: RefObject<HTMLElement | null>,
  zoomTo: (pixelsPerSecond: number, seconds: Seconds, x: number) => void,
  latest: RefObject<{ scale: TimeScale }>,
): void {
  // The browser's own zoom would win unless the wheel is caught before it, which React's passive listeners cannot.
  useLayoutEffect(() => {
    const box = scroller.current
    if (!box) return
    let held: { x: number; seconds: Seconds } | null = null
    const wheel = (event: WheelEvent) => {
      const factor = zoomOfWheel(event)
      if (factor === null) return
      event.preventDefault()
      const { scale } = latest.current
      const x = event.clientX - box.getBoundingClientRect().left
      const under = toSeconds(scale, box.scrollLeft + x)
      const isSame = held?.x === x && Math.abs(held.seconds - under) * scale.pixelsPerSecond <= 1
      held = { x, seconds: isSame && held ? held.seconds : under }
      zoomTo(scale.pixelsPerSecond * factor, held.seconds, x)
    }
    box.addEventListener('wheel', wheel, { passive: false })
    return () => box.removeEventListener('wheel', wheel)
  }, [scroller, zoomTo, latest])
}
