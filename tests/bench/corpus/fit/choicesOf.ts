import { accentsOn } from '#audio/dsp/accents.ts'
import { barGuesses, barTraits } from '#audio/dsp/barTraits.ts'
import { EIGHT, eightGuesses, eightTraits } from '#audio/dsp/eightTraits.ts'
import { harmonyInSteps } from '#audio/dsp/harmony.ts'
import { type Heard, heardOf } from '#audio/dsp/heard.ts'
import { onsetsInSteps } from '#audio/dsp/onsets.ts'
import { pulseGuesses } from '#audio/dsp/pulseGuesses.ts'
import { pulseTraits } from '#audio/dsp/pulseTraits.ts'
import type { Choice, Option } from '#tests/bench/corpus/fit/conditionalLogit.ts'
import type { Rendition } from '#tests/bench/corpus/fit/renditions.ts'
import { fMeasure } from '#tests/bench/corpus/fMeasure.ts'
import { finished } from '#tests/support/finished.ts'

/** The three choices that are made of a song; null where none of its guesses is right or what is right is not known. */
export interface Choices {
  pulse: Choice | null
  bar: Choice | null
  eight: Choice | null
}

/** A guess is right where it scores more than this: half of its beats or ones are not. */
const RIGHT = 0.75

export function hear({ samples, sampleRate }: Rendition): Heard {
  return heardOf(finished(onsetsInSteps(samples, sampleRate)), finished(harmonyInSteps(samples, sampleRate)))
}

/** Guesses at the beat as they are heard; guesses at bars and eights on the true beats. */
export function choicesOf(song: Rendition, heard: Heard): Choices {
  const { beats, downbeats, phrases8, weight } = song
  const length = song.samples.length / song.sampleRate
  const choice = (options: Option[]): Choice | null => (options.some(({ right }) => right) ? { options, weight } : null)
  const pulse = choice(
    [...pulseGuesses(heard)]
      .flatMap(({ lines }) => lines)
      .map((line) => {
        const places = Array.from({ length: Math.ceil((length - line.start) / line.period) }, (_, n) => line.start + n * line.period)
        const isTempo = Math.abs(60 / line.period / song.bpm - 1) < 0.04
        return { traits: pulseTraits(heard, line), right: isTempo && fMeasure(places, beats) > RIGHT }
      }),
  )
  if (!downbeats || beats.length < 2 * EIGHT) return { pulse, bar: null, eight: null }
  const accents = accentsOn(heard, beats)
  const every = (step: number, from: number) => beats.filter((_, n) => n % step === from)
  const bar = choice(
    barGuesses().map((guess) => ({
      traits: barTraits(accents, guess),
      right: fMeasure(every(guess.bar, guess.one), downbeats) > RIGHT,
    })),
  )
  if (!phrases8) return { pulse, bar, eight: null }
  const size = song.meter === '6/8' ? 2 : 4
  const eight = choice(
    eightGuesses(beats.indexOf(downbeats[0]!) % size, size).map((first) => ({
      traits: eightTraits(accents, size, first),
      right: fMeasure(every(EIGHT, first), phrases8) > RIGHT,
    })),
  )
  return { pulse, bar, eight }
}
