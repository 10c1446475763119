import type { CallForm } from '#engine/ledger/sayCall.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Block, Foot, SetBlock, StrikesPerBeat } from '#plan/model.ts'
import type { Counts, Rpm, Seconds, StepRange } from '#units/units.ts'
import type { Text } from '#words/said.ts'

type SpanKind = 'briefing' | 'leadIn' | 'block' | 'openTail' | 'clearUp'

export interface Span {
  readonly kind: SpanKind
  readonly from: Seconds
  readonly to: Seconds
  readonly sectionId?: string
  /** Index into `blocks`, for spans of kind block. */
  readonly block?: number
}

export interface PlayedBlock {
  /** Index in `RideReport.blocks`. */
  readonly index: number
  readonly block: Block
  readonly sectionId: string
  /** Index in `RideReport.sections`. */
  readonly section: number
  /** Present inside a set; rounds and parts count from 1. */
  readonly set?: { readonly set: SetBlock; readonly round: number; readonly part: number }
  readonly from: Seconds
  readonly to: Seconds
  /** Seconds since the section's count one (without its lead-in). */
  readonly sectionFrom: Seconds
  readonly sectionTo: Seconds
  /** Counts since the section's in-point; absent where the section is measured in seconds. */
  readonly countFrom?: Counts
  readonly countTo?: Counts
  /** The part of the block that lies past the section's out-point, in counts or in seconds as the section is measured. */
  readonly beyond: number
  readonly cadence: PlayedCadence
  readonly strikesPerBeat: StrikesPerBeat
  /** Foot on the first count: null where none is defined (off the beat, legs still, no foot on the one). */
  readonly foot: Foot | null
  /** True where the leader has to say the foot: set by a section, a swap, or named otherwise than it would fall. */
  readonly footSpoken: boolean
  readonly ledger: LedgerEntry
  /** How the block's start sits on the music; absent where the section has no grid. */
  readonly alignment?: Alignment
}

/**
 * Cadence of a block: `still` for legs still and off the bike, `unknown` when neither tempo nor a stated cadence gives one.
 * Where it turns, from where it starts to where it ends, the least and most in between, and the mean over its time.
 * Without pieces that is one straight line; where the tempo of the song moves, a steady piece after another.
 */
export type PlayedCadence =
  | {
      readonly kind: 'turning'
      readonly from: Rpm
      readonly to: Rpm
      readonly least: Rpm
      readonly most: Rpm
      readonly mean: Rpm
      readonly pieces?: CadencePiece[]
    }
  | { readonly kind: 'still' }
  | { readonly kind: 'unknown' }

/** A cadence that holds from the end of the piece before to a second counted from the start of its block. */
export interface CadencePiece {
  readonly to: Seconds
  readonly rpm: Rpm
}

export interface LedgerEntry {
  readonly before: LedgerState
  readonly after: LedgerState
  /** How it is given. */
  readonly form: CallForm
  /** What is said: "one and a quarter on", "to three to four", "stay", "all off". */
  readonly call: string
  /** The state after, written small: "1½", "3–4", "4¼ or more", "3 or less". */
  readonly total: string
  /** Signed change written small ("+¾", "−1¼", "stay"), or "to 3–4" where the states are not single values. */
  readonly change: string
  readonly checkpoint?: StepRange
  /** Present where the ride is shown on another bike. */
  readonly reading?: LedgerReading
}

/** An entry as it reads on another bike: its call, total and change are in that bike's words, its numbers still in the ride's steps. */
interface LedgerReading {
  /** The total written smallest: "~13", "~11–13", "feel". */
  readonly small: string
  /** What the total feels like: "solid hill". */
  readonly feel: Text
  /** What rounding to a whole step does to the power, or why there is no reading. */
  readonly rounding: Text
  /** The checkpoint: "about 11–13". */
  readonly checkpoint?: string
}

export type AlignmentGrade = 'phrase' | 'eight' | 'count' | 'off'

export interface Alignment {
  readonly grade: AlignmentGrade
  /** Signed distance to the nearest count, eight and phrase: positive when the change is late. */
  readonly fromCount: { readonly counts: Counts; readonly milliseconds: number }
  readonly fromEight: { readonly counts: Counts; readonly milliseconds: number }
  readonly fromPhrase: { readonly counts: Counts; readonly milliseconds: number }
}

export interface SectionReport {
  readonly sectionId: string
  /** Start of the lead-in, the section's count one, and the end of its last span. */
  readonly from: Seconds
  readonly one: Seconds
  readonly to: Seconds
  /** The ridden stretch of the song by its in- and out-point; absent without a grid. */
  readonly counts?: { readonly in: Counts; readonly out: Counts; readonly total: Counts }
  /** Counts in an eight and a phrase here: 8 and 32, or 6 and 24 in three and six. */
  readonly unit: { readonly eight: Counts; readonly phrase: Counts; readonly name: 'eight' | 'six' }
  readonly bpm?: number
  /** Half-open range of indices into `blocks`. */
  readonly blocks: { readonly from: number; readonly to: number }
  /** Uncovered end of the section, and what runs past it; counts or seconds as the section is measured. */
  readonly open: number
  readonly beyond: number
  /** Share of changes inside the section that fall on the eight or better, 0–1; null without changes. */
  readonly aligned: number | null
  readonly entersAt: string
  readonly leavesAt: string
}
