import type { Rider } from '#plan/riderModel.ts'
import type { Bpm, Counts, Effort, KnobSteps, Rpm, Seconds, Setting, StepRange, Watts } from '#units/units.ts'
import { beatAt, type OddPlace } from './songs/oddBeats.ts'

/** The version of the document this build writes. Older ones are migrated, newer ones refused. */
export const CURRENT_SCHEMA = 2

/** One class plan. Plain JSON; everything derived from it lives in the engine's report, never here. */
export interface Ride {
  schema: typeof CURRENT_SCHEMA
  id: string
  title: string
  /** What the class is for, in one line. */
  aim?: string
  level: Level
  /** Length of the booked slot in minutes. */
  slotMinutes: number
  /** Wall clock of the start, "HH:MM" in 24 hours. */
  startsAt?: string
  /** Welcome, set-up and safety words before the first section. */
  briefingSeconds: Seconds
  /** Wiping down and leaving, after the last section. */
  clearUpSeconds: Seconds
  /** What a total counts from: each rider's own base, or the loose wheel. */
  datum: 'base' | 'loose'
  bike: Bike
  /** What kind of room it is taught in. */
  room?: 'studio' | 'online'
  /** Where that is, as people find it: "Studio B, Quay Street". The bike has a name of its own. */
  location?: string
  /** One or two. */
  leaders: Leader[]
  sections: Section[]
  /** The studio's own values for the editable constants of the engine, by constant name. */
  houseRules?: HouseRules
  /** Moves this room does not do, by name. */
  avoidMoves?: string[]
  /** What someone who takes the class over has to know of this room. */
  standIn?: StandIn
  /** What this ride was made from: a longer ride, or a copy received. */
  parent?: { rideId: string; revision: string }
  /** Editions this ride holds all of, latest first, so that two copies find what they have in common (see plan/merge/lineage.ts). */
  ancestors?: string[]
  /** Modelled riders of this class. Absent: the three default ones. Never in a link. */
  riders?: Rider[]
  /** Ids of findings that are meant so: put aside, for this ride. Never in a link. */
  setAside?: string[]
  /** Ids of blocks to be rehearsed again. Never in a link. */
  shaky?: string[]
  /** Never in a link. */
  privateNotes?: string
}

/** For a substitute: each a few lines in the leader's own words. */
export interface StandIn {
  /** Keys, sound desk, light, which bikes are broken, who comes before and after. */
  room?: string
  /** What regulars expect of this class. */
  regulars?: string
  mustDo?: string
  mustNot?: string
}

export type Level = 'beginner' | 'mixed' | 'advanced'
export type HouseRules = Record<string, number>

export interface Leader {
  id: string
  name: string
  /** Calm speaking rate; the engine slows it when the leader works hard. */
  wordsPerMinute: number
}

/**
 * A stretch of the ride, normally one song. Its blocks are measured in counts when its
 * song has a beat grid, and in seconds when it has none or there is no song.
 */
export interface Section {
  id: string
  title?: string
  song?: Song | null
  /** First count of the song that is ridden; 0, the first beat, unless given. */
  inCount?: Counts
  /** Count at which the section ends; the end of the song's last whole eight unless given. */
  outCount?: Counts
  /** Seconds before the section's count one; negative is a crossfade into the song before. */
  leadInSeconds: Seconds
  /** The foot that lands on the section's first count. */
  lead?: Foot
  blocks: Item[]
  notes?: string
}

export type Foot = 'left' | 'right'
export type Item = Block | SetBlock

export interface Song {
  id: string
  title: string
  artist?: string
  /** Absent while the tempo is not known. */
  grid?: BeatGrid
  lengthSeconds: Seconds
  /** How often a foot reaches the bottom of its stroke in one beat; null rides off the beat. */
  strikesPerBeat: StrikesPerBeat
  marks?: { count: Counts; label: string }[]
  /** Stretches to be kept free of speech. */
  quiet?: { from: Counts; to: Counts }[]
  /** Fit for a room with clean lyrics only. */
  clean?: boolean
  /** Links the song to an audio file dropped again later. */
  fingerprint?: string
}

export type StrikesPerBeat = 0.5 | 1 | 2 | null

/** Beats as (count, second) anchors, evenly in time between them and beyond the last two; at least two, both rising. */
export interface BeatGrid {
  anchors: [count: Counts, second: Seconds][]
  beatsPerBar: 3 | 4 | 6
  /** Beats too many or too few, by rising count (see plan/songs/oddBeats.ts); the tempo goes on through them. */
  odd?: OddPlace[]
}

export type Length = { counts: Counts } | { seconds: Seconds }

/** One continuous instruction. */
export interface Block {
  id: string
  label?: string
  terrain: Terrain
  length: Length
  posture: Posture
  hands: Hands
  resistance: Resistance
  /** The total the leader rides where it is another than the class is told; counts from the ride's datum. */
  ownTotal?: KnobSteps
  /** Stated cadence; inside a song on the beat it follows from the tempo and is left out. */
  cadence?: Cadence
  /** This block's own strikes per beat where it leaves the song's. */
  strikesPerBeat?: StrikesPerBeat
  /** Intended effort, 0–10: level when both are equal, else a straight ramp. */
  effort: { from: Effort; to: Effort }
  /** What happens to the lead foot at the block's first count; kept unless given. */
  lead?: 'keep' | 'swap' | Foot
  move?: Move
  /** A true all-out effort: the handbook's long recoveries apply. */
  allOut?: boolean
  water?: boolean
  /** The leader is off the bike and among the riders. */
  walk?: boolean
  easier?: Option
  harder?: Option
  /** What the resistance should feel like once it is found. */
  feel?: string
  cues: Cue[]
  /** Leader id; the first leader unless given. */
  leader?: string
  /** Leader id of who speaks; the block's leader unless given. */
  mic?: string
  /** Fitting and cutting leave the block alone. */
  locked?: boolean
  minEights?: number
  maxEights?: number
  notes?: string
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
  | { kind: 'keep'; checkpoint?: StepRange }
  | { kind: 'change'; mode: 'exact' | 'atLeast' | 'ifYouHaveIt'; steps: KnobSteps; checkpoint?: StepRange }
  | { kind: 'total'; from: KnobSteps; to: KnobSteps; orMore?: true; aim?: KnobSteps; checkpoint?: StepRange }
  | { kind: 'byFeel'; from: KnobSteps; to: KnobSteps; orMore?: true }
  | { kind: 'allOff' }

export type Keep = Extract<Resistance, { kind: 'keep' }>
export type Change = Extract<Resistance, { kind: 'change' }>
export type Total = Extract<Resistance, { kind: 'total' }>
export type ByFeel = Extract<Resistance, { kind: 'byFeel' }>

export type Cadence = { rpm: Rpm; rampTo?: Rpm } | 'legsStill'

/** A move repeated through the block; `counts` is one half for a jump (up, then as long down), else the whole figure. */
export interface Move {
  name: string
  counts: Counts
  side?: Foot
  then?: 'alternate'
}

/** An easier or harder version offered without judgement. */
export interface Option {
  text: string
}

export interface SetBlock {
  id: string
  label?: string
  rounds: number
  parts: Block[]
  /** Steps added to the stated resistance of every later round. */
  perRound?: { steps: KnobSteps }
}

export interface Cue {
  id: string
  moment: CueMoment
  /** How long before the change the words end (action: 0). */
  lead: { counts: Counts } | { seconds: Seconds }
  text: string
  /** Count-in of four or eight. */
  count?: 4 | 8
}

export const CUE_MOMENTS = ['preview', 'announce', 'countIn', 'action', 'form', 'story'] as const
export type CueMoment = (typeof CUE_MOMENTS)[number]

/** A resistance scale. Settings are in the bike's own unit; a step is 1 / stepsPerUnit of it. */
export interface Bike {
  id: string
  name: string
  unit: string
  stepsPerUnit: number
  /** Lowest setting; 0 unless given. */
  min?: Setting
  max: Setting
  /** Setting at which a rider with no offset just controls the pedals. */
  base: Setting
  brake: 'friction' | 'magnetic'
  /** How the brake was found to answer to cadence; absent, it answers as its kind does. */
  brakeFit?: BrakeFit
  referenceRpm: Rpm
  /** Measured or typical power at the reference cadence, by rising absolute setting. */
  points: [setting: Setting, watts: Watts][]
  feelAnchors?: { feel: string; setting: Setting }[]
  /** Where the points come from: a console's watts, or feels found on the bike; absent, they are typical ones or typed. */
  calibration?: 'watts' | 'feel'
}

/** A brake between friction and magnetic. */
export interface BrakeFit {
  /** n of power ∝ cadenceⁿ at the reference cadence: 1 is friction, 2 magnetic. */
  exponent: number
  /** Standard error of it. */
  error: number
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
