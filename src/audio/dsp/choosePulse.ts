import type { TempoWindow } from '#plan/heardSong.ts'
import { candidatePeriods } from './candidatePeriods.ts'
import { fitGrid } from './fitGrid.ts'
import type { Line } from './fitLine.ts'
import type { Heard } from './heard.ts'
import { pulseTraits } from './pulseTraits.ts'
import { PULSE_WEIGHTS } from './pulseWeights.ts'
import { choose, scoreOf } from './scoreOf.ts'

/** Where the first beat may stand against the strongest onsets, as shares of the period. */
const TURNS = [0, 0.25, 0.5, 0.75]
/** Log odds a tempo inside the window gains: enough to settle half against double, not to turn the beat off the music. */
const WINDOW_GAIN = 3
/** Two grids whose beats are nearer than this share of a period are one. */
const SAME = 0.06

/** The grid of constant tempo that is most likely the beat, and its odds against all others, 0 to 1. */
export function choosePulse(heard: Heard, window?: TempoWindow): { line: Line; odds: number } {
  const lines: Line[] = []
  for (const period of candidatePeriods(heard.rhythm)) {
    for (const turn of TURNS) {
      const line = fitGrid(heard.curve, heard.onsets.rate, period, turn)
      if (!lines.some((other) => same(other, line))) lines.push(line)
    }
  }
  if (lines.length === 0) return { line: { period: 0.5, start: 0 }, odds: 0 }
  const gain = (line: Line) => (window && 60 / line.period >= window.from && 60 / line.period <= window.to ? WINDOW_GAIN : 0)
  const { best, odds } = choose(lines, (line) => scoreOf(pulseTraits(heard, line), PULSE_WEIGHTS) + gain(line), same)
  return { line: best, odds }
}

function same(a: Line, b: Line): boolean {
  if (Math.abs(a.period / b.period - 1) > 0.001) return false
  const apart = Math.abs(a.start - b.start) / a.period
  return Math.abs(apart - Math.round(apart)) < SAME
}
