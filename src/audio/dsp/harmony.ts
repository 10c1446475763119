import { downsampleInSteps } from './downsample.ts'
import { scaled } from './scaled.ts'
import { framesOf, spectraInSteps } from './spectra.ts'

/** Which notes sound and how much the chord changes, frame by frame; frame i is at i / rate seconds. */
export interface Harmony {
  /** Frames a second. */
  rate: number
  /** 0 where the same notes go on, up to 1 where others begin. */
  change: Float32Array
  /** How strong each of the twelve pitch classes is, `PITCHES` values for each frame. */
  chroma: Float32Array
  /** How strong each semitone of the bass is, `BASS_NOTES` values for each frame. */
  bass: Float32Array
}

/** The rate listened at, about; Hz. */
const RATE = 5512.5
/** Chords are slow: 25 frames a second, heard in 370 ms, compared over 160 ms to both sides. */
const FRAMING = { size: 2048, perSecond: 25 }
const ASIDE = 4
/** Share of the work that thinning the samples out takes. */
const THINNING = 0.2
/** Notes from about E2 to G6; lower ones cannot be told apart in so short a time. Hz. */
const LOWEST = 82
const HIGHEST = 1600
export const PITCHES = 12
/** The bass's notes from A1, two octaves, which are told apart roughly; Hz. */
const BASS_LOWEST = 53.5
export const BASS_NOTES = 24

/**
 * Change of harmony: one less the likeness (cosine) of the twelve pitch classes before and after a frame (chroma after
 * Fujishima T, Realtime chord recognition of musical sound, ICMC 1999; that its change is heard as a change of harmony, after
 * Harte C, Sandler M, Gasser M, Detecting harmonic change in musical audio, AMCMM 2006, 21-26, who take a distance of tonal
 * centroids instead). Yields the share done, 0 to 1.
 */
export function* harmonyInSteps(samples: Float32Array, sampleRate: number): Generator<number, Harmony> {
  const sound = yield* scaled(downsampleInSteps({ samples, rate: sampleRate }, Math.max(1, Math.round(sampleRate / RATE))), 0, THINNING)
  const { rate, count } = framesOf(sound, FRAMING)
  const width = sound.rate / FRAMING.size
  const first = Math.ceil(LOWEST / width)
  const bins = Math.min(FRAMING.size / 2, Math.floor(HIGHEST / width) + 1)
  const pitchOf = Uint8Array.from({ length: bins }, (_, k) => (k < first ? 0 : mod(Math.round(PITCHES * Math.log2((k * width) / 440)))))
  const bassFirst = Math.ceil(BASS_LOWEST / width)
  const bassEnd = Math.min(bins, Math.floor((BASS_LOWEST * 2 ** (BASS_NOTES / 12)) / width))
  const noteOf = Uint8Array.from({ length: bassEnd }, (_, k) => Math.max(0, Math.floor(12 * Math.log2((k * width) / BASS_LOWEST))))
  const chroma = new Float32Array(count * PITCHES)
  const bass = new Float32Array(count * BASS_NOTES)
  const spectra = spectraInSteps(sound, FRAMING, bins, (frame, power) => {
    // The square root of the magnitude: a loud note is not to drown the others.
    for (let k = first; k < bins; k++) chroma[frame * PITCHES + pitchOf[k]!]! += Math.sqrt(Math.sqrt(power[k]!))
    for (let k = bassFirst; k < bassEnd; k++) bass[frame * BASS_NOTES + noteOf[k]!]! += Math.sqrt(Math.sqrt(power[k]!))
  })
  yield* scaled(spectra, THINNING, 1 - THINNING)
  const change = new Float32Array(count)
  for (let frame = ASIDE; frame + ASIDE < count; frame++) {
    const at = (other: number) => chroma.subarray(other * PITCHES, (other + 1) * PITCHES)
    change[frame] = 1 - likeness(at(frame - ASIDE), at(frame + ASIDE))
  }
  return { rate, change, chroma, bass }
}

const mod = (pitch: number): number => ((pitch % PITCHES) + PITCHES) % PITCHES

/** Cosine of two rows of values, each about its mean, 0 at least: noise is alike in all and says nothing. 1 for silence. */
export function likeness(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const n = a.length
  let ma = 0
  let mb = 0
  for (let p = 0; p < n; p++) {
    ma += a[p]! / n
    mb += b[p]! / n
  }
  let ab = 0
  let aa = 0
  let bb = 0
  for (let p = 0; p < n; p++) {
    const x = a[p]! - ma
    const y = b[p]! - mb
    ab += x * y
    aa += x * x
    bb += y * y
  }
  const length = Math.sqrt(aa * bb)
  return length > 0 ? Math.max(0, ab / length) : 1
}
