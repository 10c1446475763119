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
import type { Said } from '#words/said.ts'
import type { EnergyEstimate } from './energy/energySpent.ts'
import type { PlayedBlock, SectionReport, Span } from './played.ts'
import type { RecoveryReport } from './recovery/findBouts.ts'
import type { Measures } from './shape/measures.ts'
import type { Overall } from './shape/overall.ts'
import type { StrainCurve } from './shape/strainCurve.ts'

/** All that is computed of one ride. Derived, never stored. Times are seconds since the ride clock's zero. */
export interface RideReport {
  /** What its totals are counted in, and from where. */
  readonly scale: Scale
  /** Tile the ride from 0 to `overall.total` with no gap or overlap. */
  readonly spans: readonly Span[]
  /** Every block as it is played, sets unrolled round by round and part by part. */
  readonly blocks: readonly PlayedBlock[]
  readonly sections: readonly SectionReport[]
  readonly sets: readonly SetReport[]
  readonly overall: Overall
  readonly curves: Curves
  readonly recovery: RecoveryReport
  readonly measures: Measures
  readonly balance: BalanceReport
  readonly cues: CueReport
  readonly shape: ShapeReport
  readonly difficulty: DifficultyReport
  /** What the ride asks of each modelled rider; all of it estimates for a modelled person, never a measurement. */
  readonly riders: readonly RiderReport[]
  readonly findings: readonly Finding[]
  /** The bike that calls and totals are worded for, where it is another than the ride's (`onAnotherBike`). */
  readonly shownOn?: ShownOn
}

export interface SetReport {
  readonly setId: string
  readonly from: Seconds
  readonly to: Seconds
  readonly workSeconds: Seconds
  readonly easySeconds: Seconds
  /** work ÷ easy; null where there is no easy time. */
  readonly ratio: number | null
}

/** Exact breakpoints, straight between them; a step is two points at one time. */
export interface CurvePoint {
  readonly at: Seconds
  readonly value: number
}

interface Curves {
  /** Intended effort; gaps (lead-ins, open tails) break it into runs. */
  readonly intent: readonly (readonly CurvePoint[])[]
  readonly strain: StrainCurve
}

export interface BalanceReport {
  readonly right: number
  readonly left: number
  /** |R − L| ÷ (R + L); null below eight accents. */
  readonly imbalance: number | null
  readonly holdSeconds: { readonly right: Seconds; readonly left: Seconds }
}

export type Severity = 'problem' | 'warning' | 'hint'

export interface Finding {
  /** Stable while the cause stays: rule and place. */
  readonly id: string
  readonly rule: RuleName
  readonly severity: Severity
  /** One sentence in the trade's words. */
  readonly text: Said
  /** Where its block stands on the bike the ride is read on, if that is another and the finding is about the knob. */
  readonly shownAs?: Said
  /** Where the rule comes from: a named source, common practice, or arithmetic. */
  readonly why: Said
  readonly at: Seconds
  readonly sectionId?: string
  readonly blockId?: string
  /** Index into `blocks` where one played block is meant. */
  readonly block?: number
  /** How far past the line it is, in the rule's own unit. */
  readonly amount?: number
  /**
   * Repairs, each of which makes it smaller or takes it away, brings nothing else as heavy, and goes against no other
   * finding's. Tried when first read (see findings/vetting).
   */
  readonly fixes: readonly Fix[]
  /** Every repair its rule knows, untried: for who tries each themselves. */
  readonly proposed: readonly Fix[]
  /** What keeps the repair there would be from being offered, in a sentence; where none is offered. */
  readonly heldBack?: Said
  /** About the class as a whole, while the ride is far from filling its slot: to be weighed once it does. */
  readonly later?: boolean
}

/** A repair in the imperative ("Add ¾ turn"); applying it is one undo step. */
export interface Fix {
  readonly label: Said
  readonly command: Command
}

/** The ride as one modelled rider meets it. */
export interface RiderReport {
  readonly rider: Rider
  /** The one the ride is judged for: new in a beginner class, else regular. */
  readonly reference: boolean
  /** By played block; null where no cadence is known or a crossfade leaves the block no time. */
  readonly demand: readonly (BlockDemand | null)[]
  readonly response: ResponseReport
  readonly reserve: ReserveReport
  readonly energy: EnergyEstimate
  /** Σ demand × minutes. */
  readonly load: number
  /** Where nine of ten such riders on such bikes would lie. */
  readonly band: RiderBand
}

/** Predicted heart rate as shares of the rider's reserve, with what turns them into beats a minute. */
interface ResponseReport extends HeartCurve {
  readonly range: HeartRange
  readonly secondsByClass: Record<IntensityClass, Seconds>
  /** Absent for a rider of whom no threshold is known. */
  readonly secondsByThreshold?: ByThreshold
}

/** What there is to say and when; lines stand by the time they start. */
export interface CueReport {
  readonly lines: readonly CueLine[]
  /** Everything riders have to change, in order, with the call for a pace that changes without the knob. */
  readonly changes: readonly Change[]
  /** Numbers that are spoken otherwise than planned; `line` is an index into `lines`. */
  readonly mismatches: readonly (Mismatch & { readonly line: number })[]
  readonly talk: readonly SectionTalk[]
  /** Windows with more speech than the limit. */
  readonly crowded: readonly Crowded[]
  /** Stretches of the songs to be kept free of speech, on the ride clock. */
  readonly quiet: readonly (Stretch & { readonly section: number })[]
  /** Where there is room for more than calls. */
  readonly storyWindows: readonly Stretch[]
  /** How many rounds are left, as each begins. */
  readonly repeats: readonly RepeatCall[]
  /** Every move with its first showing. */
  readonly showings: readonly Showing[]
}
