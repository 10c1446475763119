import type { Drift } from '#plan/songs/heardSong.ts'
import type { Line } from './fitLine.ts'
import { median } from './median.ts'
import { peakNear } from './valueAt.ts'

/** Beats looked at together: one that is off may be a fill, eight are a drift. */
const TOGETHER = 8
/** Beats farther off than this are heard as off; seconds (half of the tolerance used in judging beat trackers). */
const OFF = 0.035

/** Tracked beats have to be this much stronger than the grid's beats beside them to speak against it; with less, breaks in songs of known constant tempo are named. */
const STRONGER = 2.5
/** How far from a beat its onset may lie, seconds. */
const NEAR = 0.02

/** Onsets and how many frames of them there are in a second. */
interface Curve {
  values: ArrayLike<number>
  rate: number
}

/**
 * Where a constant tempo does not hold: stretches of eight beats and more that were tracked freely and whose median
 * distance from the grid's nearest beat is more than 35 ms. Two kinds of stretch are left out. Where tracked beats keep
 * the grid's own distance they are another part's, such as the off-beats. And where they are not much stronger than
 * the grid's beats beside them nothing speaks against the grid: in a break a tracker strays because there is little
 * to follow.
 *
 * @param tracked beats found without the grid, seconds, rising
 */
export function driftsFrom(tracked: readonly number[], line: Line, curve: Curve): Drift[] {
  const off = tracked.map((second) => {
    const place = (second - line.start) / line.period
    return (place - Math.round(place)) * line.period
  })
  const drifts: Drift[] = []
  for (let i = 0; i + TOGETHER <= tracked.length; i++) {
    const middle = median(off.slice(i, i + TOGETHER))
    if (Math.abs(middle) <= OFF) continue
    const beats = tracked.slice(i, i + TOGETHER)
    if (keepsTempo(beats, line) || strength(beats, curve) < STRONGER * strength(onGrid(beats, line), curve)) continue
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

/** The grid's beats nearest to those that were tracked. */
const onGrid = (beats: readonly number[], { start, period }: Line): number[] =>
  beats.map((second) => start + Math.round((second - start) / period) * period)

const strength = (beats: readonly number[], { values, rate }: Curve): number =>
  beats.reduce((sum, second) => sum + peakNear(values, second * rate, NEAR * rate), 0)
