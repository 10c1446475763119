import { strengthOf } from './candidatePeriods.ts'
import type { Line } from './fitLine.ts'
import type { Heard } from './heard.ts'
import type { Rhythm } from './rhythm.ts'
import { peakNear, valueAt } from './valueAt.ts'

/** Onsets this near to a place in the grid belong to it; seconds. */
const NEAR = 0.03
/** The tempo people move to where they can choose, beats a minute (about 120: van Noorden and Moelants 1999). */
const LIKELY = 118

/**
 * What speaks for and against a grid being the beat: its tempo, how far its places stand out, what falls between
 * them, whether kick and snare take turns on them, and how alike the song is one, two and four beats on. Each is
 * about −1 to 2. Their weights are in `pulseWeights.ts`.
 */
export function pulseTraits({ onsets, curve, rhythm, lowRhythm, harmony, chordRhythm }: Heard, line: Line): number[] {
  const { rate, low, mid, high } = onsets
  const frames = curve.length
  const period = line.period * rate
  const start = line.start * rate
  const reach = Math.min(NEAR * rate, period / 9)
  const beats = Math.max(1, Math.floor((frames - start) / period))
  const at = (of: Float32Array, part: number, every = 1, offset = 0) => {
    let sum = 0
    let n = 0
    for (let k = offset; k < beats; k += every, n++) sum += peakNear(of, start + (k + part) * period, reach)
    return n === 0 ? 0 : sum / n
  }
  const on = at(curve, 0)
  const half = at(curve, 0.5)
  const quarters = (at(curve, 0.25) + at(curve, 0.75)) / 2
  const thirds = [at(curve, 1 / 3), at(curve, 2 / 3)]
  const contrast = (a: number, b: number) => (a - b) / (a + b + 1e-9)
  const turns = (of: Float32Array) => contrast(at(of, 0, 2), at(of, 0, 2, 1))
  const lowTurn = turns(low)
  const midTurn = turns(mid)
  const highTurn = turns(high)
  const chord = (part: number, every = 1, offset = 0) => {
    let sum = 0
    let n = 0
    for (let k = offset; k < beats; k += every, n++) sum += valueAt(harmony.change, (line.start + (k + part) * line.period) * harmony.rate)
    return n === 0 ? 0 : sum / n
  }
  const fourth = (of: (part: number, every: number, offset: number) => number) => {
    const means = [0, 1, 2, 3].map((offset) => of(0, 4, offset))
    return Math.max(...means) / (means.reduce((a, b) => a + b, 0) / 4 + 1e-9) - 1
  }
  const octaves = Math.log2(60 / line.period / LIKELY)
  const alike = (of: Rhythm, n: number) => valueAt(of.likeness, n * line.period * of.rate)
  return [
    octaves,
    octaves ** 2,
    Math.log(0.05 + on),
    contrast(half, on),
    contrast(quarters, on),
    contrast(Math.min(...thirds), on),
    contrast(Math.max(...thirds), on),
    contrast(at(low, 0), at(low, 0.5)),
    contrast(at(mid, 0), at(mid, 0.5)),
    contrast(at(high, 0), at(high, 0.5)),
    Math.abs(lowTurn),
    Math.abs(midTurn),
    Math.abs(highTurn),
    -lowTurn * midTurn,
    -lowTurn * highTurn,
    alike(rhythm, 0.5),
    alike(rhythm, 1),
    alike(rhythm, 2),
    alike(rhythm, 3),
    alike(rhythm, 4),
    alike(lowRhythm, 1),
    alike(lowRhythm, 2),
    alike(lowRhythm, 3),
    alike(lowRhythm, 4),
    contrast(at(curve, 0), at(curve, 0.25)),
    contrast(at(curve, 0), at(curve, 0.75)),
    contrast(at(low, 0), at(low, 0.25)),
    contrast(at(low, 0), at(low, 0.75)),
    contrast(chord(0), chord(0.5)),
    contrast(chord(0), chord(0.25)),
    contrast(chord(0), chord(0.75)),
    Math.abs(contrast(chord(0, 2), chord(0, 2, 1))),
    fourth(chord),
    fourth((part, every, offset) => at(low, part, every, offset)),
    fourth((part, every, offset) => at(mid, part, every, offset)),
    alike(chordRhythm, 1),
    alike(chordRhythm, 2),
    alike(chordRhythm, 4),
    alike(chordRhythm, 8),
    Math.log(1e-3 + strengthOf(rhythm, period)) / 2,
  ]
}
