import type { Counts, Seconds } from '#units/units.ts'
import { faultOfOdd, type OddPlace, startOfOdd } from './oddBeats.ts'

/** How near to it a bend has to be to be sure of it: how far the stretches on either side may differ, and what they hold from whole beats. */
interface Sureness {
  steady: number
  whole: number
}

/** How far two stretches beside a bend may differ and be of one tempo, as a share: what rounding to a tenth of a millisecond makes of a single beat. */
const STEADY = 1e-3
/** How far what a bend holds may be from whole beats, as a share of a beat; the same rounding, over a few bars. */
const WHOLE = 0.01
const WRITTEN: Sureness = { steady: STEADY, whole: WHOLE }

/** The same of beats as they are heard, each some milliseconds early or late (own choice: 25 ms of half a second). */
export const HEARD: Sureness = { steady: 0.05, whole: 0.1 }

type Anchors = readonly (readonly [count: Counts, second: Seconds])[]

/**
 * The odd places that anchors hold as bends of the tempo: a stretch between two of them that lasts a whole number of
 * beats more or fewer than it has counts, at the one tempo of the stretches before and after it. Anchors stay as they
 * are: with the beats that are over or missing counted, the tempo goes on through them. None where it is not sure.
 */
export function bendsOf(anchors: Anchors, { steady, whole } = WRITTEN): OddPlace[] {
  const odd: OddPlace[] = []
  const period = (i: number) => (anchors[i + 1]![1] - anchors[i]![1]) / (anchors[i + 1]![0] - anchors[i]![0])
  for (let i = 1; i + 2 < anchors.length; i++) {
    const [[from, start], [to, end]] = [anchors[i]!, anchors[i + 1]!]
    const beat = (period(i - 1) + period(i + 1)) / 2
    if (Math.abs(period(i - 1) - period(i + 1)) > steady * beat) continue
    const beats = (end - start) / beat
    const over = Math.round(beats) - (to - from)
    const place: OddPlace = [to, over]
    const isPlace = over !== 0 && Math.abs(beats - Math.round(beats)) <= whole && startOfOdd(place) >= from
    if (isPlace && faultOfOdd([...odd, place]) === undefined) odd.push(place)
  }
  return odd
}
