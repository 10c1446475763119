import type { Counts, Seconds } from '#units/units.ts'

/**
 * What happened in a class: the smallest record from which, with the ride, everything that was or
 * is on the leading screen follows. Plain JSON. Song-relative times are the truth: an act says what
 * was heard or wanted at a moment, and where that puts the class is worked out anew each time.
 */
export interface LeadLog {
  /** Milliseconds since 1970 at which the booked slot began. */
  slotFrom: number
  /** Milliseconds since 1970 at the zero of the class clock, which is the ride clock's; the first one was heard the ride's briefing and lead-in later. */
  startedAt: number
  /** In the order of time. */
  events: readonly LeadEvent[]
}

/** An act at a time on the class clock. */
export type LeadEvent = LeadAct & { at: Seconds }

export type LeadAct =
  /** A one of the music is heard: the first before a song and in its first phrase, later the nearest. */
  | { kind: 'one' }
  /** On to the next block, from the nearest eight. */
  | { kind: 'next' }
  /** This block from its start, or in its first eight the one before; a song's first block starts the song. */
  | { kind: 'back' }
  /** The round once more after this one; outside a set the block. */
  | { kind: 'again' }
  /** Stay in this eight (without beats: at this second) until `go`. */
  | { kind: 'hold' }
  | { kind: 'go' }
  /** The rest of this song is left out. */
  | { kind: 'skipSong' }
  /** The class ends here. */
  | { kind: 'breakOff' }
  /** Something still to come is left out, to end on time. */
  | { kind: 'cut'; cuts: readonly Cut[] }

/** Something a class can do without. Sections and blocks by their index in the plan's report. */
export type Cut =
  /** A whole song with the gap before it. */
  | { kind: 'song'; section: number }
  /** The last rounds of a set; its song ends as much earlier. */
  | { kind: 'rounds'; section: number; setId: string; rounds: number }
  /** Counts of a block that goes on; its song ends as much earlier. */
  | { kind: 'phrase'; section: number; block: number; counts: Counts }
  /** The end of a song. */
  | { kind: 'outro'; section: number; counts: Counts }

/** Seconds on the class clock at an instant in milliseconds since 1970. */
export const classTime = ({ startedAt }: Pick<LeadLog, 'startedAt'>, instant: number): Seconds => (instant - startedAt) / 1000

/** How late the class began, in seconds; negative when early. */
export const lateBy = ({ slotFrom, startedAt }: Pick<LeadLog, 'slotFrom' | 'startedAt'>): Seconds => (startedAt - slotFrom) / 1000
