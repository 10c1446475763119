import type { BeatHints, Beats } from '#plan/heardSong.ts'
import { beatsOf } from './beatsOf.ts'
import { harmonyInSteps } from './harmony.ts'
import { heardOf } from './heard.ts'
import { onsetsInSteps } from './onsets.ts'
import { soundingFrom } from './soundingFrom.ts'

/** Seconds a song needs to be given a beat. */
export const SHORTEST = 4
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

  return beatsOf(heard, { length, opening: soundingFrom(samples, sampleRate), window: hints.window })
}

function* scaled<T>(steps: Generator<number, T>, from: number, share: number): Generator<number, T> {
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
    yield from + step.value * share
  }
}
