import type { Effort } from '#units/units.ts'

/** Where the chart of effort stands in its place on the stage, in pixels: its height, the room over it, and the times under it. */
export const CHART = { height: 178, top: 10, times: 22 } as const

/** Pixels from one level of effort to the next. */
export const LEVEL_HEIGHT = (CHART.height - CHART.top - CHART.times) / 10

/** How far under the top of the chart's place a level of effort is drawn, in pixels. */
export const levelToY = (level: Effort): number => CHART.top + (10 - level) * LEVEL_HEIGHT
