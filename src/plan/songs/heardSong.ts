import type { BeatGrid } from '#plan/model.ts'
import type { SongSound } from '#plan/sound/songSound.ts'
import type { Bpm, Seconds } from '#units/units.ts'
import type { Text } from '#words/said.ts'

/** The beat grid of a song as it was heard in its sound; seconds from the start of the file. */
export interface Beats {
  /** Unrounded. */
  bpm: Bpm
  /** Every beat from the first that sounds to the end. */
  beats: Seconds[]
  /** Those of the beats that start a bar. */
  downbeats: Seconds[]
  /** Those of the downbeats that start eight beats, as songs are counted and their parts begin; none in three-four. */
  eights: Seconds[]
  /** Three, four, or six eighths: six is counted in two beats of three eighths each. */
  beatsPerBar: BeatGrid['beatsPerBar']
  firstBeat: Seconds
  /** 0 to 1: how likely tempo, beat and bar are all right, as far as the analysis can tell. */
  confidence: number
  /** Where a constant tempo does not hold. */
  drifts: Drift[]
  /** Whether the beats are one grid of constant tempo; else they follow the music. */
  steady: boolean
}

/** A stretch in which the beats heard leave the constant grid. */
export interface Drift {
  from: Seconds
  to: Seconds
  /** How far most of its beats are off; late is positive. */
  offBy: Seconds
}

/** What may be known of a song before it is heard. */
export interface BeatHints {
  /** Tempi that suit the cadence it is to be ridden at: settles half against double. */
  window?: TempoWindow
}

export interface TempoWindow {
  from: Bpm
  to: Bpm
}

/** Every tempo of one octave about another, so that of half and double only the nearer one is inside. */
export const octaveAbout = (bpm: Bpm): TempoWindow => ({ from: bpm / Math.SQRT2, to: bpm * Math.SQRT2 })

/** What a file of music gave. */
export interface HeardSong {
  /** As the file's own tags say; else its name without the ending. */
  title: string
  artist?: string
  /** The same for the same file, whatever it is called; tells a song's file again. */
  fingerprint: string
  /** What is drawn of it. */
  sound: SongSound
  lengthSeconds: Seconds
  /** Null: too short or too quiet to have a beat. */
  beats: Beats | null
}

/** Where the hearing of one file stands. */
export type Hearing =
  | { kind: 'waiting' }
  | { kind: 'decoding' }
  /** Share done, 0 to 1. */
  | { kind: 'analysing'; share: number }
  | { kind: 'heard'; song: HeardSong }
  /** All it would give is there already. */
  | { kind: 'known'; fingerprint: string }
  /** One sentence that names the file. */
  | { kind: 'failed'; sentence: Text }
  | { kind: 'aborted' }

/** Whether more is to be said of a file. */
export const isUnderWay = ({ kind }: Hearing): boolean => kind === 'waiting' || kind === 'decoding' || kind === 'analysing'
