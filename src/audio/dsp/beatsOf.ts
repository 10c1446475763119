import type { Beats, TempoWindow } from '#plan/heardSong.ts'
import { type CountWeights, chooseBar } from './chooseBar.ts'
import { choosePulse } from './choosePulse.ts'
import { driftsFrom } from './driftsFrom.ts'
import { EIGHT } from './eightTraits.ts'
import type { Line } from './fitLine.ts'
import type { Heard } from './heard.ts'
import type { Weights } from './scoreOf.ts'
import { trackBeats } from './trackBeats.ts'

/** A song that drifts over more than this share of its length is followed beat by beat. */
const UNSTEADY = 0.3
/** A beat may sound this much before its place in the grid; seconds. */
const EARLY = 0.07

/** What is known of a song besides what is heard. */
export interface Known {
  /** Seconds. */
  length: number
  /** Second at which it starts to sound. */
  opening: number
  window?: TempoWindow | undefined
}

/** Tempo, beats, bars and eights of what is heard of a song, by the weights given; else by those of this build. */
export function beatsOf(heard: Heard, { length, opening, window }: Known, weights?: { pulse: Weights } & CountWeights): Beats {
  const { rate } = heard.onsets
  const { line, odds } = choosePulse(heard, window, weights?.pulse)
  const tracked = trackBeats(heard.curve, line.period * rate).map((frame) => frame / rate)
  const drifts = driftsFrom(tracked, line)
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
