import type { Beats, TempoWindow } from '#plan/songs/heardSong.ts'
import { type CountWeights, chooseBar } from './chooseBar.ts'
import { choosePulseInSteps } from './choosePulse.ts'
import { driftsFrom } from './driftsFrom.ts'
import { EIGHT } from './eightTraits.ts'
import type { Line } from './fitLine.ts'
import type { Heard } from './heard.ts'
import { scaled } from './scaled.ts'
import type { Weights } from './scoreOf.ts'
import { trackBeats } from './trackBeats.ts'

/** A song that drifts over more than this share of its length is followed beat by beat. */
const UNSTEADY = 0.3
/** A beat may sound this much before its place in the grid; seconds. */
const EARLY = 0.07

/** Share of the work that choosing the pulse takes. */
const PULSE = 0.7

/** What is known of a song besides what is heard. */
interface Known {
  /** Seconds. */
  length: number
  /** Second at which it starts to sound. */
  opening: number
  window?: TempoWindow | undefined
}

/** How guesses are weighed. */
type BeatWeights = { pulse: Weights } & CountWeights

/**
 * Tempo, beats, bars and eights of what is heard of a song, by the weights given; else by those of this build. Yields
 * the share done, 0 to 1.
 */
export function* beatsInSteps(heard: Heard, { length, opening, window }: Known, weights?: BeatWeights): Generator<number, Beats> {
  const { rate } = heard.onsets
  const { line, odds } = yield* scaled(choosePulseInSteps(heard, window, weights?.pulse), 0, PULSE)
  const tracked = trackBeats(heard.curve, line.period * rate).map((frame) => frame / rate)
  yield (1 + PULSE) / 2
  const drifts = driftsFrom(tracked, line, { values: heard.curve, rate })
  const steady = drifts.reduce((sum, { from, to }) => sum + to - from, 0) <= UNSTEADY * length

  const places = steady ? gridBeats(line, length) : tracked
  const { bar, one, eight, odds: barOdds } = chooseBar(heard, places, weights)
  const first = Math.max(
    0,
    places.findIndex((second) => second >= opening - EARLY),
  )
  const beats = places.slice(first)
  const every = (step: number, from: number) => beats.filter((_, i) => (i + first - from) % step === 0)
  return {
    bpm: steady ? 60 / line.period : (60 * (beats.length - 1)) / (beats.at(-1)! - beats[0]!),
    beats,
    downbeats: every(bar, one),
    eights: bar === 3 ? [] : every(EIGHT, eight),
    beatsPerBar: bar === 2 ? 6 : bar,
    firstBeat: beats[0]!,
    confidence: odds * barOdds * (steady ? 1 : 0.5),
    drifts,
    steady,
  }
}

function gridBeats({ period, start }: Line, length: number): number[] {
  const count = Math.max(1, Math.ceil((length - start) / period))
  return Array.from({ length: count }, (_, n) => start + n * period)
}
