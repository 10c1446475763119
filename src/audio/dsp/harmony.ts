import { downsample } from './downsample.ts'
import { makeFft } from './fft.ts'
import { padded } from './padded.ts'

/** How much the chord changes, frame by frame; frame i is at i / rate seconds. */
export interface Harmony {
  /** Frames a second. */
  rate: number
  /** 0 where the same notes go on, up to 1 where others begin. */
  change: Float32Array
}

/** Chords are slow: 25 frames a second, heard in 370 ms, compared over 160 ms to both sides. */
const FRAMES = 25
const RATE = 5512.5
const SIZE = 2048
const ASIDE = 4
/** Notes from about E2 to G6; lower ones cannot be told apart in so short a time. Hz. */
const LOWEST = 82
const HIGHEST = 1600
const PITCHES = 12
const STEP = 400

/**
 * Change of harmony: one less the likeness (cosine) of the twelve pitch classes before and after a frame (chroma
 * after Fujishima 1999, its change after Harte, Sandler and Gasser 2006; from memory). Two frames go through one
 * transform. Yields the share done, 0 to 1.
 */
export function* harmonyInSteps(samples: Float32Array, sampleRate: number): Generator<number, Harmony> {
  const sound = downsample({ samples, rate: sampleRate }, Math.max(1, Math.round(sampleRate / RATE)))
  const hop = Math.max(1, Math.round(sound.rate / FRAMES))
  const rate = sound.rate / hop
  const count = Math.floor(sound.samples.length / hop) + 1
  const width = sound.rate / SIZE
  const first = Math.ceil(LOWEST / width)
  const last = Math.min(SIZE / 2 - 1, Math.floor(HIGHEST / width))
  const pitchOf = Uint8Array.from({ length: last + 1 }, (_, k) => (k < first ? 0 : mod(Math.round(PITCHES * Math.log2((k * width) / 440)))))

  const fft = makeFft(SIZE)
  const window = Float64Array.from({ length: SIZE }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / SIZE))
  const re = new Float64Array(SIZE)
  const im = new Float64Array(SIZE)
  const wide = padded(sound.samples, SIZE / 2, 2 * SIZE)
  const chroma = new Float32Array((count + 1) * PITCHES)
  for (let frame = 0; frame < count; frame += 2) {
    const start = frame * hop
    for (let i = 0; i < SIZE; i++) {
      re[i] = window[i]! * wide[start + i]!
      im[i] = window[i]! * wide[start + hop + i]!
    }
    fft(re, im)
    for (let k = first; k <= last; k++) {
      const place = frame * PITCHES + pitchOf[k]!
      chroma[place]! += Math.sqrt(Math.hypot(re[k]! + re[SIZE - k]!, im[k]! - im[SIZE - k]!))
      chroma[place + PITCHES]! += Math.sqrt(Math.hypot(im[k]! + im[SIZE - k]!, re[k]! - re[SIZE - k]!))
    }
    if (frame % STEP === 0) yield frame / count
  }
  const change = new Float32Array(count)
  for (let frame = ASIDE; frame + ASIDE < count; frame++) change[frame] = 1 - likeness(chroma, frame - ASIDE, frame + ASIDE)
  return { rate, change }
}

const mod = (pitch: number): number => ((pitch % PITCHES) + PITCHES) % PITCHES

/** Cosine of two frames' pitch classes, each about its mean: noise is alike in all twelve and says nothing. */
function likeness(chroma: Float32Array, a: number, b: number): number {
  let ma = 0
  let mb = 0
  for (let p = 0; p < PITCHES; p++) {
    ma += chroma[a * PITCHES + p]! / PITCHES
    mb += chroma[b * PITCHES + p]! / PITCHES
  }
  let ab = 0
  let aa = 0
  let bb = 0
  for (let p = 0; p < PITCHES; p++) {
    const x = chroma[a * PITCHES + p]! - ma
    const y = chroma[b * PITCHES + p]! - mb
    ab += x * y
    aa += x * x
    bb += y * y
  }
  const length = Math.sqrt(aa * bb)
  return length > 0 ? Math.max(0, ab / length) : 1
}
