import type { Seconds } from '#units/units.ts'

/** What a click stands for: the first count of an eight, the first of a bar, another beat, or a second where there is no music. */
export type ClickKind = 'eight' | 'bar' | 'beat' | 'second'

export interface Click {
  at: Seconds
  kind: ClickKind
}

/** A stretch of a song's file that sounds. */
export interface Sounding {
  /** Another one for every stretch of a score; the same for the same stretch whenever it is asked for. */
  key: string
  /** The song's fingerprint. */
  song: string
  from: Seconds
  to: Seconds
  /** The second of the file that sounds at `from`. */
  songFrom: Seconds
  /** How long it comes in and goes out for, at its two ends. */
  fadeIn: Seconds
  fadeOut: Seconds
}

/** Music and clicks on one clock that only goes on, in seconds at the planned pace. It is asked piece by piece, so it may go on for ever. */
export interface Score {
  /** Where it is over; infinite where it comes again and again. */
  end: Seconds
  /** The clicks that fall into a stretch, its beginning included and its end not, in their order. */
  clicks: (from: Seconds, to: Seconds) => Click[]
  /** What sounds anywhere in a stretch, in the order in which it begins. */
  sounding: (from: Seconds, to: Seconds) => Sounding[]
}
