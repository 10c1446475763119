import type { Bpm } from '#units/units.ts'
import { type Loudness, meanLoudness } from './meanLoudness.ts'

/** How much drive a song has, 1 to 5. */
export type Energy = 1 | 2 | 3 | 4 | 5

/** From silence's side to the loudest masters there are, LUFS of the whole song in one channel (common practice). */
const LEVEL = { from: -22, to: -9 } as const
/** Tempi that feel slow and that feel driving, beats a minute, each read in the octave from 80 to 160 (common practice). */
const BEATS = { from: 85, to: 150 } as const
const OCTAVE = { from: 80, to: 160 } as const
/** A second counts as loud within so many LU of the song's loudest tenth. */
const NEAR_LOUDEST = 3
/** What each says of a song's drive (common practice; together 1). */
const WEIGHTS = { level: 0.5, sustained: 0.25, beats: 0.25 } as const
/** Quieter than this is a pause and no part of the music, LUFS. */
const PAUSE = -60

/**
 * A guess at a song's drive from its sound: how loud it is, for how much of its time it stays near its loudest, and
 * how dense its beat is. Common practice without a source: mastering, style and words weigh as much and are not
 * looked at, so a leader's own ear goes first. Null for silence. Linear in the length.
 */
export function guessEnergy(loudness: Loudness, bpm: Bpm | undefined): Energy | null {
  const seconds = Array.from(loudness).filter((level) => level > PAUSE)
  const mean = meanLoudness(seconds, 0, seconds.length)
  if (mean === undefined) return null
  const loudest = seconds.toSorted((a, b) => a - b)[Math.floor(0.9 * (seconds.length - 1))]!
  const level = share(mean, LEVEL)
  const sustained = seconds.filter((each) => each > loudest - NEAR_LOUDEST).length / seconds.length
  const told = bpm === undefined ? WEIGHTS.level + WEIGHTS.sustained : 1
  const sum = WEIGHTS.level * level + WEIGHTS.sustained * sustained + (bpm === undefined ? 0 : WEIGHTS.beats * share(felt(bpm), BEATS))
  return (1 + Math.round((4 * sum) / told)) as Energy
}

const share = (value: number, { from, to }: { from: number; to: number }): number => Math.min(1, Math.max(0, (value - from) / (to - from)))

/** The tempo in one octave, since half and double are one sound. */
function felt(bpm: Bpm): Bpm {
  const octaves = Math.ceil(Math.log2(OCTAVE.from / bpm))
  const inside = bpm * 2 ** octaves
  return inside >= OCTAVE.to ? inside / 2 : inside
}
