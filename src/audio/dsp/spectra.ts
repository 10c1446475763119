import type { Sound } from './downsample.ts'
import { makeFft } from './fft.ts'

/** Frames between two words on how far it is: some milliseconds of work. */
const STEP = 1000

/** How a sound is cut into frames. */
interface Framing {
  /** Samples in a frame, a power of two; the middle of frame `i` is at `i / rate` seconds. */
  size: number
  /** Frames a second, about. */
  perSecond: number
}

/** Frames a second as they are, and how many there are. */
interface Frames {
  rate: number
  count: number
}

/** How many frames a sound has: one more than whole hops go into it. */
export function framesOf({ samples, rate }: Sound, { perSecond }: Framing): Frames {
  const hop = hopOf(rate, perSecond)
  return { rate: rate / hop, count: Math.floor(samples.length / hop) + 1 }
}

/**
 * Power spectra of a sound, frame by frame under a Hann window. Two frames go through one transform, as its real and
 * its imaginary part. `see` is given each frame's number and its power in the bins from 0 to half the size, in an
 * array that is used again. Yields the share done, 0 to 1, every thousand frames.
 *
 * @param bins only bins below this one are worked out
 */
export function* spectraInSteps(
  sound: Sound,
  framing: Framing,
  bins: number,
  see: (frame: number, power: Float64Array) => void,
): Generator<number, void> {
  const { size } = framing
  const { count } = framesOf(sound, framing)
  const hop = hopOf(sound.rate, framing.perSecond)
  const fft = makeFft(size)
  const window = Float64Array.from({ length: size }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / size))
  const re = new Float64Array(size)
  const im = new Float64Array(size)
  const first = new Float64Array(bins)
  const second = new Float64Array(bins)
  const wide = padded(sound.samples, size / 2, size + hop)
  for (let frame = 0; frame < count; frame += 2) {
    const start = frame * hop
    for (let i = 0; i < size; i++) {
      re[i] = window[i]! * wide[start + i]!
      im[i] = window[i]! * wide[start + hop + i]!
    }
    fft(re, im)
    for (let k = 1; k < bins; k++) {
      const r = re[k]!
      const m = im[k]!
      const r2 = re[size - k]!
      const m2 = im[size - k]!
      first[k] = (r + r2) * (r + r2) + (m - m2) * (m - m2)
      second[k] = (m + m2) * (m + m2) + (r - r2) * (r - r2)
    }
    see(frame, first)
    if (frame + 1 < count) see(frame + 1, second)
    if (frame % STEP === 0) yield frame / count
  }
}

const hopOf = (rate: number, perSecond: number): number => Math.max(1, Math.round(rate / perSecond))

/** Samples with silence before and after, so that a window may reach beyond both ends at no cost to each read. */
function padded(samples: Float32Array, before: number, after: number): Float32Array {
  const out = new Float32Array(before + samples.length + after)
  out.set(samples, before)
  return out
}
