import type { CurvePoint } from '#engine/report.ts'
import type { Stretch } from '#units/units.ts'
import type { Sight } from './followHead.ts'
import { type TimeScale, toSeconds } from './timeScale.ts'

/**
 * The stretch of the ride that is drawn: what is seen and at least half as much on either side. It moves on in
 * halves of what is seen, so scrolling draws nothing anew in between. It may begin before the ride and end after it.
 */
export function drawnStretch({ left, width }: Sight, scale: TimeScale): Stretch {
  const half = Math.max(1, width / 2)
  const first = Math.floor(left / half)
  return { from: toSeconds(scale, (first - 1) * half), to: toSeconds(scale, (first + 4) * half) }
}

/** Whether any of a thing lies in a stretch, or it touches its edge. */
export const reaches = (stretch: Stretch, { from, to }: Stretch): boolean => to >= stretch.from && from <= stretch.to

/** Runs of breakpoints as far as they concern a stretch: every point in it, and the nearest on either side, so that the lines are the same. */
export function runsWithin(runs: readonly (readonly CurvePoint[])[], { from, to }: Stretch): CurvePoint[][] {
  return runs.flatMap((run) => {
    const first = run.findLastIndex(({ at }) => at < from)
    const end = run.findIndex(({ at }) => at > to)
    const part = run.slice(Math.max(0, first), end === -1 ? run.length : end + 1)
    const [start] = part
    const last = part.at(-1)
    return start && last && reaches({ from, to }, { from: start.at, to: last.at }) ? [part] : []
  })
}
