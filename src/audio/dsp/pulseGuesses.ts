import { candidatePeriods } from './candidatePeriods.ts'
import { fitGrid } from './fitGrid.ts'
import type { Line } from './fitLine.ts'
import type { Heard } from './heard.ts'

/** Where the first beat may stand against the strongest onsets, as shares of the period. */
const TURNS = [0, 0.25, 0.5, 0.75]
/** Two grids whose beats are nearer than this share of a period are one. */
const SAME = 0.06

/** Every grid that may be a song's beat, one period after another: a grid for each likely place of its first beat. `done`: 0 to 1. */
export function* pulseGuesses(heard: Heard): Generator<{ done: number; lines: Line[] }, void> {
  const known: Line[] = []
  const periods = candidatePeriods(heard.rhythm)
  for (const [i, period] of periods.entries()) {
    const lines = gridsOf(heard, period, known)
    known.push(...lines)
    yield { done: (i + 1) / periods.length, lines }
  }
}

/** The grids of one period that are not among those known. */
function gridsOf(heard: Heard, period: number, known: readonly Line[]): Line[] {
  const lines: Line[] = []
  for (const turn of TURNS) {
    const line = fitGrid(heard.curve, heard.onsets.rate, period, turn)
    if (![...known, ...lines].some((other) => isSamePulse(other, line))) lines.push(line)
  }
  return lines
}

/** Two grids with the same beats. */
export function isSamePulse(a: Line, b: Line): boolean {
  if (Math.abs(a.period / b.period - 1) > 0.001) return false
  const apart = Math.abs(a.start - b.start) / a.period
  return Math.abs(apart - Math.round(apart)) < SAME
}
