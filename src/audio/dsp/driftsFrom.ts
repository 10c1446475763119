import type { Drift } from '#plan/heardSong.ts'
import type { Line } from './fitLine.ts'
import { median } from './median.ts'

/** Beats looked at together: one that is off may be a fill, eight are a drift. */
const TOGETHER = 8
/** Beats farther off than this are heard as off; seconds (half of the tolerance used in judging beat trackers). */
const OFF = 0.035

/**
 * Where a constant tempo does not hold: stretches of eight beats and more that were tracked freely and whose median
 * distance from the grid's nearest beat is more than 35 ms. A stretch half a beat off is not a change of tempo but a
 * tracker on the off-beats, and is left out when its beats keep the grid's own distance.
 *
 * @param tracked beats found without the grid, seconds, rising
 */
export function driftsFrom(tracked: readonly number[], line: Line): Drift[] {
  const off = tracked.map((second) => {
    const place = (second - line.start) / line.period
    return (place - Math.round(place)) * line.period
  })
  const drifts: Drift[] = []
  for (let i = 0; i + TOGETHER <= tracked.length; i++) {
    const here = off.slice(i, i + TOGETHER)
    const middle = median(here)
    if (Math.abs(middle) <= OFF || keepsTempo(tracked.slice(i, i + TOGETHER), line)) continue
    const from = tracked[i]!
    const to = tracked[i + TOGETHER - 1]!
    const last = drifts.at(-1)
    if (last && from <= last.to) {
      last.to = to
      if (Math.abs(middle) > Math.abs(last.offBy)) last.offBy = middle
    } else drifts.push({ from, to, offBy: middle })
  }
  return drifts
}

/** Whether beats that are off run at the grid's own tempo to within a fiftieth of a beat: then they are another part's, steadily. */
function keepsTempo(beats: readonly number[], line: Line): boolean {
  const steps = beats.slice(1).map((second, i) => second - beats[i]!)
  return Math.abs(median(steps) / line.period - 1) < 0.02 && Math.abs((beats.at(-1)! - beats[0]!) / steps.length / line.period - 1) < 0.004
}
