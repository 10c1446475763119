import type { TempoWindow } from '#plan/songs/heardSong.ts'
import type { Line } from './fitLine.ts'
import type { Heard } from './heard.ts'
import { isSamePulse, pulseGuesses } from './pulseGuesses.ts'
import { pulseTraits } from './pulseTraits.ts'
import { PULSE_WEIGHTS } from './pulseWeights.ts'
import { choose, scoreOf, type Weights } from './scoreOf.ts'

/** How near two tempi in whole octaves have to be to each other to be the same music. */
const OCTAVE = 0.01

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
  for (const { done, lines } of pulseGuesses(heard)) {
    for (const line of lines) scores.set(line, scoreOf(pulseTraits(heard, line), weights))
    yield done
  }
  if (scores.size === 0) return { line: { period: 0.5, start: 0 }, odds: 0 }
  const lines = [...scores.keys()]
  const scoreOfLine = (line: Line) => scores.get(line)!
  const likeliest = choose(lines, scoreOfLine, isSamePulse)
  if (!window || isIn(window, likeliest.best)) return { line: likeliest.best, odds: likeliest.odds }
  const octaves = lines.filter((line) => isIn(window, line) && isOctave(line, likeliest.best))
  return { line: octaves.length === 0 ? likeliest.best : choose(octaves, scoreOfLine, isSamePulse).best, odds: likeliest.odds }
}

const isIn = ({ from, to }: TempoWindow, { period }: Line): boolean => 60 / period >= from && 60 / period <= to

const isOctave = (a: Line, b: Line): boolean => [2, 0.5].some((octave) => Math.abs((a.period * octave) / b.period - 1) < OCTAVE)
