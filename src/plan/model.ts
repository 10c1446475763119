import type { Rider } from '#plan/riderModel.ts'
import type { Bpm, Counts, Effort, KnobSteps, Rpm, Seconds, Setting, StepRange, Watts } from '#units/units.ts'
import type { Language } from '#words/language.ts'
import { beatAt, type OddPlace } from './songs/oddBeats.ts'

/** The version of the document this build writes. Older ones are migrated, newer ones refused. */
export const CURRENT_SCHEMA = 2

/** One class plan. Plain JSON; everything derived from it lives in the engine's report, never here. */
export interface Ride {
  readonly schema: typeof CURRENT_SCHEMA
  readonly id: string
  readonly title: string
  /** What its cues are spoken in; English unless given. */
  readonly language?: Language
  /** What the class is for, in one line. */
  readonly aim?: string
  readonly level: Level
  /** Length of the booked slot in minutes. */
  readonly slotMinutes: number
  /** Wall clock of the start, "HH:MM" in 24 hours. */
  readonly startsAt?: string
  /** Welcome, set-up and safety words before the first section. */
  readonly briefingSeconds: Seconds
  /** Wiping down and leaving, after the last section. */
  readonly clearUpSeconds: Seconds
  /** What a total counts from: each rider's own base, or the loose wheel. */
  readonly datum: 'base' | 'loose'
  readonly bike: Bike
  /** What kind of room it is taught in. */
  readonly room?: 'studio' | 'online'
  /** Where that is, as people find it: "Studio B, Quay Street". The bike has a name of its own. */
  readonly location?: string
  /** One or two. */
  readonly leaders: readonly Leader[]
  readonly sections: readonly Section[]
  /** The studio's own values for the editable constants of the engine, by constant name. */
  readonly houseRules?: HouseRules
  /** Moves this room does not do, by name. */
  readonly avoidMoves?: readonly string[]
  /** What someone who takes the class over has to know of this room. */
  readonly standIn?: StandIn
  /** What this ride was made from: a longer ride, or a copy received. */
  readonly parent?: { readonly rideId: string; readonly revision: string }
  /** Editions this ride holds all of, latest first, so that two copies find what they have in common (see plan/merge/lineage.ts). */
  readonly ancestors?: readonly string[]
  /** Modelled riders of this class. Absent: the three default ones. Never in a link. */
  readonly riders?: readonly Rider[]
  /** Ids of findings that are meant so: put aside, for this ride. Never in a link. */
  readonly setAside?: readonly string[]
  /** Ids of blocks to be rehearsed again. Never in a link. */
  readonly shaky?: readonly string[]
  /** Never in a link. */
  readonly privateNotes?: string
}

/** For a substitute: each a few lines in the leader's own words. */
export interface StandIn {
  /** Keys, sound desk, light, which bikes are broken, who comes before and after. */
  readonly room?: string
  /** What regulars expect of this class. */
  readonly regulars?: string
  readonly mustDo?: string
  readonly mustNot?: string
}

export type Level = 'beginner' | 'mixed' | 'advanced'
export type HouseRules = Readonly<Record<string, number>>

export interface Leader {
  readonly id: string
  readonly name: string
  /** Calm speaking rate; the engine slows it when the leader works hard. */
  readonly wordsPerMinute: number
}

/**
 * A stretch of the ride, normally one song. Its blocks are measured in counts when its
 * song has a beat grid, and in seconds when it has none or there is no song.
 */
export interface Section {
  readonly id: string
  readonly title?: string
  readonly song?: Song | null
  /** First count of the song that is ridden; 0, the first beat, unless given. */
  readonly inCount?: Counts
  /** Count at which the section ends; the end of the song's last whole eight unless given. */
  readonly outCount?: Counts
  /** Seconds before the section's count one; negative is a crossfade into the song before. */
  readonly leadInSeconds: Seconds
  /** The foot that lands on the section's first count. */
  readonly lead?: Foot
  readonly blocks: readonly Item[]
  readonly notes?: string
}

export type Foot = 'left' | 'right'
export type Item = Block | SetBlock

export interface Song {
  readonly id: string
  readonly title: string
  readonly artist?: string
  /** Absent while the tempo is not known. */
  readonly grid?: BeatGrid
  readonly lengthSeconds: Seconds
  /** How often a foot reaches the bottom of its stroke in one beat; null rides off the beat. */
  readonly strikesPerBeat: StrikesPerBeat
  readonly marks?: readonly { readonly count: Counts; readonly label: string }[]
  /** Stretches to be kept free of speech. */
  readonly quiet?: readonly { readonly from: Counts; readonly to: Counts }[]
  /** Fit for a room with clean lyrics only. */
  readonly clean?: boolean
  /** Links the song to an audio file dropped again later. */
  readonly fingerprint?: string
}

export type StrikesPerBeat = 0.5 | 1 | 2 | null

/** Beats as (count, second) anchors, evenly in time between them and beyond the last two; at least two, both rising. */
export interface BeatGrid {
  readonly anchors: readonly (readonly [count: Counts, second: Seconds])[]
  readonly beatsPerBar: 3 | 4 | 6
  /** Beats too many or too few, by rising count (see plan/songs/oddBeats.ts); the tempo goes on through them. */
  readonly odd?: readonly OddPlace[]
}

export type Length = { readonly counts: Counts } | { readonly seconds: Seconds }

/** One continuous instruction. */
export interface Block {
  readonly id: string
  readonly label?: string
  readonly terrain: Terrain
  readonly length: Length
  readonly posture: Posture
  readonly hands: Hands
  readonly resistance: Resistance
  /** The total the leader rides where it is another than the class is told; counts from the ride's datum. */
  readonly ownTotal?: KnobSteps
  /** Stated cadence; inside a song on the beat it follows from the tempo and is left out. */
  readonly cadence?: Cadence
  /** This block's own strikes per beat where it leaves the song's. */
  readonly strikesPerBeat?: StrikesPerBeat
  /** Intended effort, 0–10: level when both are equal, else a straight ramp. */
  readonly effort: { readonly from: Effort; readonly to: Effort }
  /** What happens to the lead foot at the block's first count; kept unless given. */
  readonly lead?: 'keep' | 'swap' | Foot
  readonly move?: Move
  /** A true all-out effort: the handbook's long recoveries apply. */
  readonly allOut?: boolean
  readonly water?: boolean
  /** The leader is off the bike and among the riders. */
  readonly walk?: boolean
  readonly easier?: Option
  readonly harder?: Option
  /** What the resistance should feel like once it is found. */
  readonly feel?: string
  readonly cues: readonly Cue[]
  /** Leader id; the first leader unless given. */
  readonly leader?: string
  /** Leader id of who speaks; the block's leader unless given. */
  readonly mic?: string
  /** Fitting and cutting leave the block alone. */
  readonly locked?: boolean
  readonly minEights?: number
  readonly maxEights?: number
  readonly notes?: string
}

export const TERRAINS = ['flat', 'tempo', 'hill', 'run', 'jumps', 'surge', 'push', 'recover', 'flush', 'stretch', 'hold'] as const
export type Terrain = (typeof TERRAINS)[number]
export const POSTURES = ['seated', 'standing', 'hovering', 'offBike'] as const
export type Posture = (typeof POSTURES)[number]
export const HANDS = ['centre', 'wide', 'ends'] as const
export type Hands = (typeof HANDS)[number]

/**
 * What riders are told to do with the knob. Steps are whole steps of the ride's bike; totals count from the ride's datum.
 * A checkpoint says where riders should be by then.
 */
export type Resistance =
  | { readonly kind: 'keep'; readonly checkpoint?: StepRange }
  | {
      readonly kind: 'change'
      readonly mode: 'exact' | 'atLeast' | 'ifYouHaveIt'
      readonly steps: KnobSteps
      readonly checkpoint?: StepRange
    }
  | {
      readonly kind: 'total'
      readonly from: KnobSteps
      readonly to: KnobSteps
      readonly orMore?: true
      readonly aim?: KnobSteps
      readonly checkpoint?: StepRange
    }
  | { readonly kind: 'byFeel'; readonly from: KnobSteps; readonly to: KnobSteps; readonly orMore?: true }
  | { readonly kind: 'allOff' }

export type Keep = Extract<Resistance, { readonly kind: 'keep' }>
export type Change = Extract<Resistance, { readonly kind: 'change' }>
export type Total = Extract<Resistance, { readonly kind: 'total' }>
export type ByFeel = Extract<Resistance, { readonly kind: 'byFeel' }>

export type Cadence = { readonly rpm: Rpm; readonly rampTo?: Rpm } | 'legsStill'

/** A move repeated through the block; `counts` is one half for a jump (up, then as long down), else the whole figure. */
export interface Move {
  readonly name: string
  readonly counts: Counts
  readonly side?: Foot
  readonly then?: 'alternate'
}

/** An easier or harder version offered without judgement. */
export interface Option {
  readonly text: string
}

export interface SetBlock {
  readonly id: string
  readonly label?: string
  readonly rounds: number
  readonly parts: readonly Block[]
  /** Steps added to the stated resistance of every later round. */
  readonly perRound?: { readonly steps: KnobSteps }
}

export interface Cue {
  readonly id: string
  readonly moment: CueMoment
  /** How long before the change the words end (action: 0). */
  readonly lead: { readonly counts: Counts } | { readonly seconds: Seconds }
  readonly text: string
  /** Count-in of four or eight. */
  readonly count?: 4 | 8
}

export const CUE_MOMENTS = ['preview', 'announce', 'countIn', 'action', 'form', 'story'] as const
export type CueMoment = (typeof CUE_MOMENTS)[number]

/** A resistance scale. Settings are in the bike's own unit; a step is 1 / stepsPerUnit of it. */
export interface Bike {
  readonly id: string
  readonly name: string
  readonly unit: string
  readonly stepsPerUnit: number
  /** Lowest setting; 0 unless given. */
  readonly min?: Setting
  readonly max: Setting
  /** Setting at which a rider with no offset just controls the pedals. */
  readonly base: Setting
  readonly brake: 'friction' | 'magnetic'
  /** How the brake was found to answer to cadence; absent, it answers as its kind does. */
  readonly brakeFit?: BrakeFit
  readonly referenceRpm: Rpm
  /** Measured or typical power at the reference cadence, by rising absolute setting. */
  readonly points: readonly (readonly [setting: Setting, watts: Watts])[]
  readonly feelAnchors?: readonly { readonly feel: string; readonly setting: Setting }[]
  /** Where the points come from: a console's watts, or feels found on the bike; absent, they are typical ones or typed. */
  readonly calibration?: 'watts' | 'feel'
}

/** A brake between friction and magnetic. */
export interface BrakeFit {
  /** n of power ∝ cadenceⁿ at the reference cadence: 1 is friction, 2 magnetic. */
  readonly exponent: number
  /** Standard error of it. */
  readonly error: number
}

export const isSet = (item: Item): item is SetBlock => 'parts' in item

/** Tempo of a grid over its whole length, unrounded: beats a minute, those that are over among them. */
export function tempoOf({ anchors, odd }: BeatGrid): Bpm {
  const [firstCount, firstSecond] = anchors[0]!
  const [lastCount, lastSecond] = anchors.at(-1)!
  return (60 * (beatAt(odd, lastCount) - beatAt(odd, firstCount))) / (lastSecond - firstSecond)
}

/** Blocks of a section are measured in counts exactly when its song has a grid. */
export const isCounted = (section: Section): boolean => section.song?.grid !== undefined
