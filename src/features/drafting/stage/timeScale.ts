import type { Seconds } from '#units/units.ts'

/** The stage's one time axis: pixels from the ride clock's zero, at a zoom in pixels a second. */
export interface TimeScale {
  readonly pixelsPerSecond: number
}

export const toX = (scale: TimeScale, at: Seconds): number => at * scale.pixelsPerSecond
export const toSeconds = (scale: TimeScale, x: number): Seconds => x / scale.pixelsPerSecond

/** Finest zoom: an eight at a middling tempo is about as wide as a hand; coarsest: two hours on a small laptop. */
export const ZOOM = { min: 0.12, max: 40, opening: 4.2 } as const

export const clampZoom = (pixelsPerSecond: number): number => Math.min(ZOOM.max, Math.max(ZOOM.min, pixelsPerSecond))

/** The zoom at which a stretch fills a width. */
export const zoomToFit = (width: number, seconds: Seconds): number => clampZoom(width / Math.max(1, seconds))

/**
 * How far the stage reaches: the ride or its slot, whichever is longer, and then up to the next five
 * minutes. Rounded so that a drag that changes the total by seconds leaves the frame alone.
 */
export const stageReach = (total: Seconds, slot: Seconds): Seconds => Math.ceil((Math.max(total, slot) + 60) / 300) * 300

const TICKS: readonly Seconds[] = [5, 10, 15, 30, 60, 120, 300, 600, 1200]

/** Times to label so that labels stay at least `apart` pixels from each other. */
export function timeTicks(scale: TimeScale, reach: Seconds, apart = 84): Seconds[] {
  const step = TICKS.find((tick) => tick * scale.pixelsPerSecond >= apart) ?? TICKS[TICKS.length - 1]!
  return Array.from({ length: Math.floor(reach / step) + 1 }, (_, i) => i * step)
}
