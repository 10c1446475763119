import type { TempoWindow } from '#plan/heardSong.ts'
import { candidatePeriods } from './candidatePeriods.ts'
import { fitGrid } from './fitGrid.ts'
import type { Line } from './fitLine.ts'
import type { Heard } from './heard.ts'
import { pulseTraits } from './pulseTraits.ts'
import { PULSE_WEIGHTS } from './pulseWeights.ts'
import { choose, scoreOf, type Weights } from './scoreOf.ts'

/** Where the first beat may stand against the strongest onsets, as shares of the period. */
const TURNS = [0, 0.25, 0.5, 0.75]
/** How near two tempi in whole octaves have to be to each other to be the same music. */
const OCTAVE = 0.01
/** Two grids whose beats are nearer than this share of a period are one. */
const SAME = 0.06

/**
 * The grid of constant tempo that is most likely the beat, and its odds against all others, 0 to 1. A tempo outside
 * the window gives way to its double or half inside it: which of them is ridden is a choice, not a hearing. Yields the
 * share done, 0 to 1.
 */
export function* choosePulseInSteps(
  heard: Heard,
  window?: TempoWindow,
  weights: Weights = PULSE_WEIGHTS,
): Generator<number, { line: Line; odds: number }> {
  const scores = new Map<Line, number>()
  const periods = candidatePeriods(heard.rhythm)
  for (const [done, period] of periods.entries()) {
    yield done / periods.length
    for (const line of gridsOf(heard, period, [...scores.keys()])) scores.set(line, scoreOf(pulseTraits(heard, line), weights))
  }
  if (scores.size === 0) return { line: { period: 0.5, start: 0 }, odds: 0 }
  const lines = [...scores.keys()]
  const scoreOfLine = (line: Line) => scores.get(line)!
  const likeliest = choose(lines, scoreOfLine, same)
  if (!window || isIn(window, likeliest.best)) return { line: likeliest.best, odds: likeliest.odds }
  const octaves = lines.filter((line) => isIn(window, line) && isOctave(line, likeliest.best))
  return { line: octaves.length === 0 ? likeliest.best : choose(octaves, scoreOfLine, same).best, odds: likeliest.odds }
}

/** Every grid that may be a song's beat: one for each likely period and each place of its first beat. */
export function pulseGuesses(heard: Heard): Line[] {
  const lines: Line[] = []
  for (const period of candidatePeriods(heard.rhythm)) lines.push(...gridsOf(heard, period, lines))
  return lines
}

/** The grids of one period that are not among those known. */
function gridsOf(heard: Heard, period: number, known: readonly Line[]): Line[] {
  const lines: Line[] = []
  for (const turn of TURNS) {
    const line = fitGrid(heard.curve, heard.onsets.rate, period, turn)
    if (![...known, ...lines].some((other) => same(other, line))) lines.push(line)
  }
  return lines
}

const isIn = ({ from, to }: TempoWindow, { period }: Line): boolean => 60 / period >= from && 60 / period <= to

const isOctave = (a: Line, b: Line): boolean => [2, 0.5].some((octave) => Math.abs((a.period * octave) / b.period - 1) < OCTAVE)

function same(a: Line, b: Line): boolean {
  if (Math.abs(a.period / b.period - 1) > 0.001) return false
  const apart = Math.abs(a.start - b.start) / a.period
  return Math.abs(apart - Math.round(apart)) < SAME
}
