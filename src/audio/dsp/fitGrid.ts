import { fitLine, type Line } from './fitLine.ts'
import { peakFrame, peakNear, valueAt } from './valueAt.ts'

/** How far from the grid an onset may be and still belong to a beat, as a share of the period; and in seconds at most. */
const REACH = 0.12
const REACH_SECONDS = 0.07
/** A line that is this share of a beat off the period asked for by the end of the song has slipped to other onsets, and is not taken. */
const SLIPPED = 0.15
const PHASES = 48
const PASSES = 3

/**
 * One grid of constant tempo through the onsets of a whole song: the phase at which they are strongest, then the line
 * through the onset peaks near its beats, each weighed by its strength. `turn` moves the phase by a share of the period
 * before the line is fitted: 0.5 asks for the grid of the off-beats.
 *
 * @param curve onsets, evened
 * @param rate frames a second
 * @param period frames
 */
export function fitGrid(curve: Float32Array, rate: number, period: number, turn = 0): Line {
  const phase = bestPhase(curve, period) + turn * period
  let line: Line = { period: period / rate, start: (phase % period) / rate }
  for (let pass = 0; pass < PASSES; pass++) {
    const numbers: number[] = []
    const seconds: number[] = []
    const weights: number[] = []
    const reach = Math.min(REACH * period, REACH_SECONDS * rate)
    for (let n = 0; ; n++) {
      const frame = (line.start + n * line.period) * rate
      if (frame >= curve.length) break
      const height = peakNear(curve, frame, reach)
      if (height <= 0) continue
      const at = frameOf(curve, frame, reach, height)
      numbers.push(n)
      seconds.push(at / rate)
      weights.push(Math.min(4, height))
    }
    const fitted = fitLine(numbers, seconds, weights, line)
    if (!(Math.abs((fitted.period * rate) / period - 1) * (curve.length / period) < SLIPPED)) break
    line = fitted
  }
  const turns = Math.floor(line.start / line.period)
  return { period: line.period, start: line.start - turns * line.period }
}

function bestPhase(curve: Float32Array, period: number): number {
  let best = 0
  let height = -1
  for (let step = 0; step < PHASES; step++) {
    const phase = (step / PHASES) * period
    let sum = 0
    for (let frame = phase; frame < curve.length; frame += period) sum += valueAt(curve, frame)
    if (sum > height) {
      height = sum
      best = phase
    }
  }
  return best
}

function frameOf(curve: Float32Array, frame: number, reach: number, height: number): number {
  for (let i = Math.max(0, Math.ceil(frame - reach)); i <= frame + reach; i++) if (curve[i] === height) return peakFrame(curve, i)
  return frame
}
