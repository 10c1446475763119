import { type RefObject, useLayoutEffect, useRef } from 'react'
import { useAppStore } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import type { Sight } from './followHead.ts'
import { type TimeScale, toSeconds } from './timeScale.ts'

/**
 * Notes in the store which stretch of the ride the stage shows, and shows it again when the stage
 * is drawn anew: after another place, or after a reload.
 *
 * @param scroller the box that is scrolled
 * @param sight what of it is seen, in pixels
 * @param zoomTo brings a second to a place across the box at a zoom in pixels a second
 */
export function useKeptView(
  scroller: RefObject<HTMLElement | null>,
  sight: Sight,
  scale: TimeScale,
  zoomTo: (pixelsPerSecond: number, seconds: Seconds, x: number) => void,
): void {
  const store = useAppStore()
  const begun = useRef(false)
  useLayoutEffect(() => {
    const { view, setView } = store.getState()
    if (!begun.current) {
      begun.current = true
      if (view && scroller.current) return zoomTo(scroller.current.clientWidth / (view.toSeconds - view.fromSeconds), view.fromSeconds, 0)
    }
    setView({ fromSeconds: toSeconds(scale, sight.left), toSeconds: toSeconds(scale, sight.left + sight.width) })
  }, [store, scroller, sight, scale, zoomTo])
}
