import type { BeatHints, Beats } from '#plan/songs/heardSong.ts'
import { beatsInSteps } from './beatsInSteps.ts'
import { harmonyInSteps } from './harmony.ts'
import { heardOf } from './heard.ts'
import { onsetsInSteps } from './onsets.ts'
import { openingInSteps } from './openingInSteps.ts'
import { scaled } from './scaled.ts'

/** Seconds a song needs to be given a beat. */
const SHORTEST = 4
/** Shares of the work: hearing where it starts, onsets, and chords. */
const OPENING = 0.05
const ONSETS = 0.55
const CHORDS = 0.25
const REST = 1 - OPENING - ONSETS - CHORDS

/**
 * Tempo, beats, bars and eights of a song, in three steps: onsets in bands and change of harmony; guesses at the beat
 * from their repetitions, each fitted to the whole song as one grid of constant tempo, of which the likeliest is taken;
 * then the likeliest bar, and the bar that starts the eights. Beats tracked freely say where the tempo does not hold; a
 * song that drifts over much of its length gets those beats instead. The relative error of a fitted tempo falls with
 * the 3/2 power of the number of beats.
 *
 * @param samples mono, about −1 to 1
 * @param sampleRate Hz, 8000 or more
 * @returns steps of some milliseconds, each yielding the share done, 0 to 1, and in the end the beats; null for a song too
 *   short or too quiet to have one. Dropping the generator aborts it.
 */
export function* analyseInSteps(samples: Float32Array, sampleRate: number, hints: BeatHints = {}): Generator<number, Beats | null> {
  const length = samples.length / sampleRate
  if (!(length >= SHORTEST)) return null
  const opening = yield* scaled(openingInSteps(samples, sampleRate), 0, OPENING)
  const onsets = yield* scaled(onsetsInSteps(samples, sampleRate), OPENING, ONSETS)
  if (!onsets.all.some((value) => value > 0)) return null
  const harmony = yield* scaled(harmonyInSteps(samples, sampleRate), OPENING + ONSETS, CHORDS)
  const heard = heardOf(onsets, harmony)
  return yield* scaled(beatsInSteps(heard, { length, opening, window: hints.window }), 1 - REST, REST)
}
