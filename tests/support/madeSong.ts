/** What a song is made of. */
export interface MadeSongParts {
  bpm: number
  seconds: number
  /** Seconds before the first beat. */
  firstBeat?: number
  beatsPerBar?: 3 | 4
  /** Hz. */
  sampleRate?: number
  /** Another song for another seed; the beats stay. */
  seed?: number
  /** Tempo from this second on, where it changes. */
  changes?: { at: number; bpm: number }
}

export interface MadeSong {
  samples: Float32Array
  sampleRate: number
  /** Seconds. */
  beats: number[]
  downbeats: number[]
}

/** Roots of four bars, semitones above A2: a fall that thousands of songs share. */
const ROOTS = [0, -4, 3, -2]
const CHORD = [0, 7, 15]

/**
 * A small song with known beats: kick on the one (and the three of four), snare between, a hat on every half, a bass
 * and a chord that changes with each bar. Every sound is made here; the same parts give the same samples everywhere.
 */
export function madeSong({
  bpm,
  seconds,
  firstBeat = 0.3,
  beatsPerBar = 4,
  sampleRate = 44_100,
  seed = 1,
  changes,
}: MadeSongParts): MadeSong {
  const samples = new Float32Array(Math.round(seconds * sampleRate))
  const noise = noiseOf(seed)
  const beats: number[] = []
  for (let at = firstBeat; at < seconds - 0.02; at += 60 / (changes && at >= changes.at ? changes.bpm : bpm)) beats.push(at)

  /** Adds a sound of some seconds at a second of the song; `wave` is asked with the seconds since it began. */
  const sound = (at: number, length: number, wave: (t: number) => number) => {
    const from = Math.round(at * sampleRate)
    const to = Math.min(samples.length, from + Math.round(length * sampleRate))
    for (let i = Math.max(0, from); i < to; i++) samples[i]! += wave((i - from) / sampleRate)
  }
  const tone = (hertz: number, t: number) => Math.sin(2 * Math.PI * hertz * t)

  for (const [number, at] of beats.entries()) {
    const beat = 60 / (changes && at >= changes.at ? changes.bpm : bpm)
    const place = number % beatsPerBar
    const root = 110 * 2 ** (ROOTS[Math.floor(number / beatsPerBar) % ROOTS.length]! / 12)
    if (place === 0 || (beatsPerBar === 4 && place === 2))
      sound(at, 0.25, (t) => 0.5 * Math.exp(-18 * t) * tone(48 + 90 * Math.exp(-40 * t), t))
    else sound(at, 0.15, (t) => Math.exp(-28 * t) * (0.22 * noise() + 0.15 * tone(190, t)))
    for (const half of [0, 0.5]) sound(at + half * beat, 0.05, (t) => 0.1 * Math.exp(-90 * t) * noise())
    sound(at, 0.45 * beat, (t) => 0.16 * Math.exp(-3 * t) * tone(root / 2, t))
    if (place === 0) {
      for (const step of CHORD)
        sound(at, beatsPerBar * beat, (t) => 0.05 * Math.min(1, 60 * t) * Math.exp(-0.6 * t) * tone(2 * root * 2 ** (step / 12), t))
    }
  }
  return { samples, sampleRate, beats, downbeats: beats.filter((_, number) => number % beatsPerBar === 0) }
}

/** Even noise from −1 to 1, the same for the same seed (mulberry32). */
export function noiseOf(seed: number): () => number {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 31 - 1
  }
}
