import { analyseInSteps } from '#audio/dsp/analyseBeats.ts'
import type { BeatHints, Beats } from '#plan/songs/heardSong.ts'
import { finished } from '#tests/support/finished.ts'

/** All steps of hearing a song's beats at once, as the worker takes them one by one. */
export const analyseBeats = (samples: Float32Array, sampleRate: number, hints: BeatHints = {}): Beats | null =>
  finished(analyseInSteps(samples, sampleRate, hints))
