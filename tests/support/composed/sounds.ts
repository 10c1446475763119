import type { Random } from '#engine/roughIn/seededRandom.ts'
import type { Drum } from './groove.ts'

/** Waves of one song's instruments, made at random, and a place to play them. */
export interface Band {
  drum: (drum: Drum, second: number, force: number) => void
  /** `pitch` in semitones above A4, 440 Hz. */
  note: (voice: Voice, pitch: number, second: number, length: number, force: number) => void
}

/** An instrument of one song. */
export interface Voice {
  /** One period. */
  table: Float32Array
  /** Seconds to full strength. */
  attack: number
  /** Share lost each second, as an exponent. */
  decay: number
  gain: number
}

const TABLE = 1024
const RELEASE = 0.03

/** A tone of up to twelve partials that fall off at random, soft or sharp at its start. */
export function voiceOf(random: Random, { sustained, gain }: { sustained: boolean; gain: number }): Voice {
  const slope = 0.7 + 1.3 * random()
  const odd = random() < 0.2
  const table = new Float32Array(TABLE)
  for (let partial = 1; partial <= 12; partial += odd ? 2 : 1) {
    const size = partial ** -slope
    for (let i = 0; i < TABLE; i++) table[i]! += size * Math.sin((2 * Math.PI * partial * i) / TABLE)
  }
  return { table, attack: sustained ? 0.01 + 0.07 * random() : 0.003 + 0.006 * random(), decay: sustained ? 0.3 : 1.5 + 4 * random(), gain }
}

/** Drums and tones that add themselves to samples. */
export function makeBand(samples: Float32Array, sampleRate: number, random: Random): Band {
  const kit = kitOf(sampleRate, random)
  return {
    drum: (drum, second, force) => {
      const wave = kit[drum]
      const from = Math.round(second * sampleRate)
      for (let i = Math.max(0, -from); i < wave.length && from + i < samples.length; i++) samples[from + i]! += force * wave[i]!
    },
    note: ({ table, attack, decay, gain }, pitch, second, length, force) => {
      const step = (TABLE * 440 * 2 ** (pitch / 12)) / sampleRate
      const from = Math.round(second * sampleRate)
      const end = Math.round((length + RELEASE) * sampleRate)
      const fade = Math.exp(-decay / sampleRate)
      let level = force * gain
      let phase = 0
      for (let i = 0; i < end && from + i < samples.length; i++) {
        const t = i / sampleRate
        const shape = Math.min(1, t / attack, (length + RELEASE - t) / RELEASE)
        const place = phase & (TABLE - 1)
        if (from + i >= 0) samples[from + i]! += level * shape * table[place]!
        phase += step
        level *= fade
      }
    },
  }
}

function kitOf(sampleRate: number, random: Random): Record<Drum, Float32Array> {
  const wave = (seconds: number, of: (t: number) => number) =>
    Float32Array.from({ length: Math.round(seconds * sampleRate) }, (_, i) => of(i / sampleRate))
  const noise = () => 2 * random() - 1
  const between = (from: number, to: number) => from + (to - from) * random()
  /** Noise without its low part: the difference of two values running. */
  const bright = (seconds: number, decay: number, gain: number) => {
    let last = 0
    return wave(seconds, (t) => {
      const now = noise()
      const edge = now - last
      last = now
      return gain * edge * Math.exp(-decay * t)
    })
  }
  const swept = (from: number, to: number, fall: number, decay: number, gain: number) =>
    wave(0.35, (t) => gain * Math.exp(-decay * t) * Math.sin(2 * Math.PI * (to * t + ((from - to) * (1 - Math.exp(-fall * t))) / fall)))
  const body = between(160, 230)
  const ring = between(14, 26)
  return {
    kick: swept(between(110, 220), between(42, 62), between(25, 50), between(8, 18), between(0.6, 0.9)),
    snare: wave(0.25, (t) => 0.4 * Math.exp(-ring * t) * noise() + 0.3 * Math.exp(-22 * t) * Math.sin(2 * Math.PI * body * t)),
    clap: wave(0.2, (t) => 0.5 * noise() * Math.exp(-20 * t) * (t < 0.02 ? 0.5 + 0.5 * Math.cos(2 * Math.PI * 100 * t) : 1)),
    rim: wave(0.05, (t) => 0.5 * Math.exp(-90 * t) * Math.sin(2 * Math.PI * 1700 * t)),
    hat: bright(0.06, between(50, 110), 0.22),
    open: bright(0.25, between(9, 16), 0.22),
    ride: bright(0.4, between(9, 18), 0.14),
    shaker: bright(0.07, between(40, 60), 0.15),
    tom: swept(between(150, 220), between(90, 130), 15, 12, 0.5),
    crash: bright(1.4, between(2.5, 4), 0.32),
  }
}
