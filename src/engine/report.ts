import type { ShownOn } from '#engine/anotherBike/readTotal.ts'
import type { RiderBand } from '#engine/band/riderBand.ts'
import type { Change } from '#engine/cues/changeAt.ts'
import type { Mismatch } from '#engine/cues/claims/checkClaims.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import type { RepeatCall } from '#engine/cues/repeatCalls.ts'
import type { Showing } from '#engine/cues/showings.ts'
import type { Crowded, SectionTalk } from '#engine/cues/talk.ts'
import type { BlockDemand } from '#engine/demand/blockDemand.ts'
import type { RuleName } from '#engine/findings/ruleNames.ts'
import type { ReserveReport } from '#engine/reserve/reserveReport.ts'
import type { HeartCurve } from '#engine/response/heartCurve.ts'
import type { HeartRange } from '#engine/response/heartReserve.ts'
import type { IntensityClass } from '#engine/response/intensityClass.ts'
import type { ByThreshold } from '#engine/response/secondsByThreshold.ts'
import type { DifficultyReport } from '#engine/shape/rateDifficulty.ts'
import type { ShapeReport } from '#engine/shape/shapeOfRide.ts'
import type { Command } from '#plan/commands/command.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Scale } from '#plan/scale/reading.ts'
import type { Seconds, Stretch } from '#units/units.ts'
import type { EnergyEstimate } from './energy/energySpent.ts'
import type { PlayedBlock, SectionReport, Span } from './played.ts'
import type { RecoveryReport } from './recovery/findBouts.ts'
import type { Measures } from './shape/measures.ts'
import type { Overall } from './shape/overall.ts'
import type { StrainCurve } from './shape/strainCurve.ts'

/** All that is computed of one ride. Derived, never stored. Times are seconds since the ride clock's zero. */
export interface RideReport {
  /** What its totals are counted in, and from where. */
  scale: Scale
  /** Tile the ride from 0 to `overall.total` with no gap or overlap. */
  spans: Span[]
  /** Every block as it is played, sets unrolled round by round and part by part. */
  blocks: PlayedBlock[]
  sections: SectionReport[]
  sets: SetReport[]
  overall: Overall
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

export interface SetReport {
  setId: string
  from: Seconds
  to: Seconds
  workSeconds: Seconds
  easySeconds: Seconds
  /** work ÷ easy; null where there is no easy time. */
  ratio: number | null
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
  rule: RuleName
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
