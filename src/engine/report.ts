import type { ShownOn } from '#engine/anotherBike/readTotal.ts'
import type { RiderBand } from '#engine/band/riderBand.ts'
import type { Change } from '#engine/cues/changeAt.ts'
import type { Mismatch } from '#engine/cues/claims/checkClaims.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import type { RepeatCall } from '#engine/cues/repeatCalls.ts'
import type { Showing } from '#engine/cues/showings.ts'
import type { Crowded, SectionTalk, Stretch } from '#engine/cues/talk.ts'
import type { BlockDemand } from '#engine/demand/blockDemand.ts'
import type { EnergyEstimate } from '#engine/energy/energyOf.ts'
import type { ReserveReport } from '#engine/reserve/reserveReport.ts'
import type { HeartCurve } from '#engine/response/heartCurve.ts'
import type { HeartRange } from '#engine/response/heartReserve.ts'
import type { IntensityClass } from '#engine/response/intensityClass.ts'
import type { ByThreshold } from '#engine/response/secondsByThreshold.ts'
import type { DifficultyReport } from '#engine/shape/rateDifficulty.ts'
import type { ShapeReport } from '#engine/shape/shapeOfRide.ts'
import type { Command } from '#plan/commands/command.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Block, Foot, SetBlock, StrikesPerBeat } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Scale } from '#plan/scale/reading.ts'
import type { Counts, Effort, KnobSteps, Rpm, Seconds, StepRange } from '#units/units.ts'
import type { Measures } from './shape/measures.ts'

/** All that is computed of one ride. Derived, never stored. Times are seconds since the ride clock's zero. */
export interface RideReport {
  /** What its totals are counted in, and from where. */
  scale: Scale
  /** Tile the ride from 0 to `totals.total` with no gap or overlap. */
  spans: Span[]
  /** Every block as it is played, sets unrolled round by round and part by part. */
  blocks: PlayedBlock[]
  sections: SectionReport[]
  sets: SetReport[]
  totals: Totals
  curves: Curves
  recovery: RecoveryReport
  measures: Measures
  balance: BalanceReport
  cues: CueReport
  shape: ShapeReport
  difficulty: DifficultyReport
  /** What the ride asks of each modelled rider; all of it estimates for a modelled person, never a measurement. */
  riders: RiderReport[]
  findings: Finding[]
  /** The bike that calls and totals are worded for, where it is another than the ride's (`onAnotherBike`). */
  shownOn?: ShownOn
}

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

export interface SetReport {
  setId: string
  from: Seconds
  to: Seconds
  workSeconds: Seconds
  easySeconds: Seconds
  /** work ÷ easy; null where there is no easy time. */
  ratio: number | null
}

export interface Totals {
  total: Seconds
  slot: Seconds
  /** slot − total; negative when the slot is overrun. */
  slack: Seconds
  /** Time of which the plan does not say what riders do: open tails and open songs. No estimate counts it. */
  unplanned: Seconds
  workSeconds: Seconds
  easySeconds: Seconds
  ratio: number | null
  /** Share of all block time at work effort, 0–1. */
  workShare: number
  /** Time-weighted mean of the intended effort over blocks. */
  meanEffort: Effort
  /** Σ effort × minutes. */
  sessionLoad: number
  /** Longest unbroken standing in seconds; sets of jumps do not count. */
  longestStanding: Seconds
  highestTotal: KnobSteps
  endsAt: LedgerState
  /** Centre of the effort over time, 0–1. */
  centroid: number | null
  /** Trailing stretch at effort 2 or less. */
  tailSeconds: Seconds
}

/** Exact breakpoints, straight between them; a step is two points at one time. */
export interface CurvePoint {
  at: Seconds
  value: number
}

interface Curves {
  /** Intended effort; gaps (lead-ins, open tails) break it into runs. */
  intent: CurvePoint[][]
  strain: StrainCurve
}

/**
 * Exponential pieces: value(t) = target(t) + (start − targetFrom) e^(−(t−from)/tau), target
 * straight from targetFrom to targetTo. Under a ramp of effort the target is that ramp delayed
 * by tau, which is the exact solution. Where nothing is planned a piece is held. Pieces adjoin from 0 to the end of the ride; read them
 * with `strainAt` (engine/shape/strainCurve.ts).
 */
export interface StrainCurve {
  pieces: { from: Seconds; to: Seconds; start: number; targetFrom: number; targetTo: number; tau: Seconds; held?: true }[]
  maximum: { at: Seconds; value: number }
}

export interface Bout {
  /** Indices into `blocks`: first and last block of the unbroken run. */
  fromBlock: number
  toBlock: number
  from: Seconds
  to: Seconds
  peak: Effort
  workSeconds: Seconds
  /** The unbroken easy run after it (effort ≤ 5), lead-ins not counted. */
  have: Seconds
  need: Seconds
  debt: Seconds
  allOut: boolean
}

export interface RecoveryReport {
  bouts: Bout[]
  totalDebt: Seconds
}

export interface BalanceReport {
  right: number
  left: number
  /** |R − L| ÷ (R + L); null below eight accents. */
  imbalance: number | null
  holdSeconds: { right: Seconds; left: Seconds }
}

export type Severity = 'problem' | 'warning' | 'hint'

export interface Finding {
  /** Stable while the cause stays: rule and place. */
  id: string
  rule: string
  severity: Severity
  /** One sentence in the trade's words. */
  text: string
  /** Where its block stands on the bike the ride is read on, if that is another and the finding is about the knob. */
  shownAs?: string
  /** Where the rule comes from: a named source, "common practice", or "arithmetic". */
  why: string
  at: Seconds
  sectionId?: string
  blockId?: string
  /** Index into `blocks` where one played block is meant. */
  block?: number
  /** How far past the line it is, in the rule's own unit. */
  amount?: number
  /**
   * Repairs, each of which makes it smaller or takes it away, brings nothing else as heavy, and goes against no other
   * finding's. Tried when first read (see findings/vetting).
   */
  readonly fixes: readonly Fix[]
  /** Every repair its rule knows, untried: for who tries each themselves. */
  proposed: readonly Fix[]
  /** What keeps the repair there would be from being offered, in a sentence; where none is offered. */
  readonly heldBack?: string
  /** About the class as a whole, while the ride is far from filling its slot: to be weighed once it does. */
  later?: boolean
}

/** A repair in the imperative ("Add ¾ turn"); applying it is one undo step. */
export interface Fix {
  label: string
  command: Command
}

/** The ride as one modelled rider meets it. */
export interface RiderReport {
  rider: Rider
  /** The one the ride is judged for: new in a beginner class, else regular. */
  reference: boolean
  /** By played block; null where no cadence is known or a crossfade leaves the block no time. */
  demand: (BlockDemand | null)[]
  response: ResponseReport
  reserve: ReserveReport
  energy: EnergyEstimate
  /** Σ demand × minutes. */
  load: number
  /** Where nine of ten such riders on such bikes would lie. */
  band: RiderBand
}

/** Predicted heart rate as shares of the rider's reserve, with what turns them into beats a minute. */
interface ResponseReport extends HeartCurve {
  range: HeartRange
  secondsByClass: Record<IntensityClass, Seconds>
  /** Absent for a rider of whom no threshold is known. */
  secondsByThreshold?: ByThreshold
}

/** What there is to say and when; lines stand by the time they start. */
export interface CueReport {
  lines: CueLine[]
  /** Everything riders have to change, in order, with the call for a pace that changes without the knob. */
  changes: Change[]
  /** Numbers that are spoken otherwise than planned; `line` is an index into `lines`. */
  mismatches: (Mismatch & { line: number })[]
  talk: SectionTalk[]
  /** Windows with more speech than the limit. */
  crowded: Crowded[]
  /** Stretches of the songs to be kept free of speech, on the ride clock. */
  quiet: (Stretch & { section: number })[]
  /** Where there is room for more than calls. */
  storyWindows: Stretch[]
  /** How many rounds are left, as each begins. */
  repeats: RepeatCall[]
  /** Every move with its first showing. */
  showings: Showing[]
}
