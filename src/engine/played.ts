import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Block, Foot, SetBlock, StrikesPerBeat } from '#plan/model.ts'
import type { Counts, Rpm, Seconds, StepRange } from '#units/units.ts'

type SpanKind = 'briefing' | 'leadIn' | 'block' | 'openTail' | 'clearUp'

export interface Span {
  kind: SpanKind
  from: Seconds
  to: Seconds
  sectionId?: string
  /** Index into `blocks`, for spans of kind block. */
  block?: number
}

export interface PlayedBlock {
  /** Index in `RideReport.blocks`. */
  index: number
  block: Block
  sectionId: string
  /** Index in `RideReport.sections`. */
  section: number
  /** Present inside a set; rounds and parts count from 1. */
  set?: { set: SetBlock; round: number; part: number }
  from: Seconds
  to: Seconds
  /** Seconds since the section's count one (without its lead-in). */
  sectionFrom: Seconds
  sectionTo: Seconds
  /** Counts since the section's in-point; absent where the section is measured in seconds. */
  countFrom?: Counts
  countTo?: Counts
  /** The part of the block that lies past the section's out-point, in counts or in seconds as the section is measured. */
  beyond: number
  cadence: PlayedCadence
  strikesPerBeat: StrikesPerBeat
  /** Foot on the first count: null where none is defined (off the beat, legs still, no foot on the one). */
  foot: Foot | null
  /** True where the leader has to say the foot: set by a section, a swap, or named otherwise than it would fall. */
  footSpoken: boolean
  ledger: LedgerEntry
  /** How the block's start sits on the music; absent where the section has no grid. */
  alignment?: Alignment
}

/**
 * Cadence of a block: `still` for legs still and off the bike, `unknown` when neither tempo nor a stated cadence gives one.
 * Where it turns, from where it starts to where it ends, the least and most in between, and the mean over its time.
 * Without pieces that is one straight line; where the tempo of the song moves, a steady piece after another.
 */
export type PlayedCadence =
  | { kind: 'turning'; from: Rpm; to: Rpm; least: Rpm; most: Rpm; mean: Rpm; pieces?: CadencePiece[] }
  | { kind: 'still' }
  | { kind: 'unknown' }

/** A cadence that holds from the end of the piece before to a second counted from the start of its block. */
export interface CadencePiece {
  to: Seconds
  rpm: Rpm
}

export interface LedgerEntry {
  before: LedgerState
  after: LedgerState
  /** What is said: "one and a quarter on", "to three to four", "stay", "all off". */
  call: string
  /** The state after, written small: "1½", "3–4", "4¼ or more", "3 or less". */
  total: string
  /** Signed change written small ("+¾", "−1¼", "stay"), or "to 3–4" where the states are not single values. */
  change: string
  checkpoint?: StepRange
  /** Present where the ride is shown on another bike. */
  reading?: LedgerReading
}

/** An entry as it reads on another bike: its call, total and change are in that bike's words, its numbers still in the ride's steps. */
interface LedgerReading {
  /** The total written smallest: "~13", "~11–13", "feel". */
  small: string
  /** What the total feels like: "solid hill". */
  feel: string
  /** What rounding to a whole step does to the power, or why there is no reading. */
  rounding: string
  /** The checkpoint: "about 11–13". */
  checkpoint?: string
}

export type AlignmentGrade = 'phrase' | 'eight' | 'count' | 'off'

export interface Alignment {
  grade: AlignmentGrade
  /** Signed distance to the nearest count, eight and phrase: positive when the change is late. */
  fromCount: { counts: Counts; milliseconds: number }
  fromEight: { counts: Counts; milliseconds: number }
  fromPhrase: { counts: Counts; milliseconds: number }
}

export interface SectionReport {
  sectionId: string
  /** Start of the lead-in, the section's count one, and the end of its last span. */
  from: Seconds
  one: Seconds
  to: Seconds
  /** The ridden stretch of the song by its in- and out-point; absent without a grid. */
  counts?: { in: Counts; out: Counts; total: Counts }
  /** Counts in an eight and a phrase here: 8 and 32, or 6 and 24 in three and six. */
  unit: { eight: Counts; phrase: Counts; name: 'eight' | 'six' }
  bpm?: number
  /** Half-open range of indices into `blocks`. */
  blocks: { from: number; to: number }
  /** Uncovered end of the section, and what runs past it; counts or seconds as the section is measured. */
  open: number
  beyond: number
  /** Share of changes inside the section that fall on the eight or better, 0–1; null without changes. */
  aligned: number | null
  entersAt: string
  leavesAt: string
}
