import { ZOOM } from '#features/drafting/stage/timeScale.ts'
import type { Seconds, Stretch } from '#units/units.ts'
import type { ZoomedTo } from './pinchZoom.ts'

/** An edge of the overview's window. */
export type WindowEdge = 'from' | 'to'

/**
 * The zoom at which the stage shows what the overview's window spans with one edge pulled to a second and the other staying
 * where it is; within the ride, and no closer or further than the stage can be zoomed.
 *
 * @param width what the stage is wide, in pixels
 * @param reach how far the stage reaches
 */
export function pulledWindow({ from, to }: Stretch, edge: WindowEdge, at: Seconds, width: number, reach: Seconds): ZoomedTo {
  const pulled = Math.min(reach, Math.max(0, at))
  const wanted = edge === 'from' ? to - pulled : pulled - from
  const pixelsPerSecond = width / Math.min(width / ZOOM.min, Math.max(width / ZOOM.max, wanted))
  return edge === 'from' ? { pixelsPerSecond, seconds: to, x: width } : { pixelsPerSecond, seconds: from, x: 0 }
}
