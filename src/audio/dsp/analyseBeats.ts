import type { BeatHints, Beats } from '#plan/heardSong.ts'
import { chooseBar } from './chooseBar.ts'
import { choosePulse } from './choosePulse.ts'
import { driftsFrom } from './driftsFrom.ts'
import { harmonyInSteps } from './harmony.ts'
import { heardOf } from './heard.ts'
import { onsetsInSteps } from './onsets.ts'
import { soundingFrom } from './soundingFrom.ts'
import { trackBeats } from './trackBeats.ts'

/** Seconds a song needs to be given a beat. */
export const SHORTEST = 4
/** A song that drifts over more than this share of its length is followed beat by beat. */
const UNSTEADY = 0.3
/** A beat may sound this much before its place in the grid; seconds. */
const EARLY = 0.07
/** Share of the work that hearing onsets takes, and chords. */
const ONSETS_SHARE = 0.55
const CHORDS_SHARE = 0.3

/**
 * Tempo, beats and bars of a song, in three steps: onsets in bands and change of harmony; guesses at the beat from
 * their repetitions, each fitted to the whole song as one grid of constant tempo, of which the likeliest is taken;
 * then the likeliest bar. Beats tracked freely say where the tempo does not hold; a song that drifts over much of its
 * length gets those beats instead. The relative error of a fitted tempo falls with the 3/2 power of the number of
 * beats.
 *
 * @param samples mono, about −1 to 1
 * @param sampleRate Hz, 8000 or more
 * @returns null for a song too short or too quiet to have a beat
 */
export function analyseBeats(samples: Float32Array, sampleRate: number, hints: BeatHints = {}): Beats | null {
  const steps = analyseInSteps(samples, sampleRate, hints)
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}

/** `analyseBeats` in steps of some milliseconds, each yielding the share done, 0 to 1; dropping the generator aborts it. */
export function* analyseInSteps(samples: Float32Array, sampleRate: number, hints: BeatHints = {}): Generator<number, Beats | null> {
  const length = samples.length / sampleRate
  if (!(length >= SHORTEST)) return null
  const onsets = yield* scaled(onsetsInSteps(samples, sampleRate), 0, ONSETS_SHARE)
  if (!onsets.all.some((value) => value > 0)) return null
  const harmony = yield* scaled(harmonyInSteps(samples, sampleRate), ONSETS_SHARE, CHORDS_SHARE)
  const heard = heardOf(onsets, harmony)
  yield ONSETS_SHARE + CHORDS_SHARE

  const { line, odds } = choosePulse(heard, hints.window)
  yield 0.97
  const tracked = trackBeats(heard.curve, line.period * onsets.rate).map((frame) => frame / onsets.rate)
  const drifts = driftsFrom(tracked, line)
  const steady = drifts.reduce((sum, { from, to }) => sum + to - from, 0) <= UNSTEADY * length

  const places = steady ? gridBeats(line, length) : tracked
  const bar = chooseBar(heard, places)
  const opening = soundingFrom(samples, sampleRate) - EARLY
  const first = Math.max(
    0,
    places.findIndex((second) => second >= opening),
  )
  const beats = places.slice(first)
  return {
    bpm: steady ? 60 / line.period : (60 * (beats.length - 1)) / (beats.at(-1)! - beats[0]!),
    beats,
    downbeats: beats.filter((_, i) => (i + first - bar.one) % bar.bar === 0),
    beatsPerBar: bar.bar === 2 ? 6 : bar.bar,
    firstBeat: beats[0]!,
    confidence: odds * bar.odds * (steady ? 1 : 0.5),
    drifts,
    steady,
  }
}

function gridBeats({ period, start }: { period: number; start: number }, length: number): number[] {
  const count = Math.max(1, Math.ceil((length - start) / period))
  return Array.from({ length: count }, (_, n) => start + n * period)
}

function* scaled<T>(steps: Generator<number, T>, from: number, share: number): Generator<number, T> {
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
    yield from + step.value * share
  }
}
