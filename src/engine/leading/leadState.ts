import type { Span } from '#engine/played.ts'
import type { Counts, Seconds } from '#units/units.ts'
import type { Round } from './ledClass.ts'

type LeadPhase = Span['kind'] | 'finished'

/** All that is true at one moment of a class. Indices into the report of the class as it comes. */
export interface LeadState {
  /** Class time. */
  at: Seconds
  phase: LeadPhase
  /** The section that plays, or comes after the lead-in; none in the briefing and at the end. */
  section?: number
  block?: number
  round?: Round
  /** Until the phase is over: of the block, the lead-in, the open tail. */
  secondsLeft: Seconds
  /** Eights of the block, the one that is ridden included; absent without beats. */
  eights?: { left: number; of: number }
  /**
   * Where the music is in its eight: the count from 1, how many there are, and how much of this one has passed, 0 to 1.
   * Beats over are counted on, 9, 10, …: a "one" only ever is the one that changes fall on. `unit` is the eight, or six.
   */
  beat?: { count: number; of: number; passed: number; unit: Counts }
  /** Which eight of the song is ridden, from 1. */
  music?: { eight: number; of: number }
  /** Beats until the change, the running one included; absent without beats. */
  countsLeft?: Counts
  /** Seconds until the posture changes; through the blocks that keep it, never past the song. */
  postureLeft?: Seconds
  /** The next block, and the seconds until it. */
  next?: { block: number; in: Seconds }
  /** Index of the cue line that is to be said now. */
  cue?: number
  /** Until the music of this section ends. */
  songLeft: Seconds
  /** Length of the class as it comes. */
  total: Seconds
  /** Slot less the time the class will end, counted from the slot's beginning; negative when it runs over. */
  spare: Seconds
  /** How much later than planned this comes, counted from the slot's beginning; negative when ahead. */
  behind: Seconds
  /** Seconds this has been held. */
  held?: Seconds
}
