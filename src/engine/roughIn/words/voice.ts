import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Bike, Foot, Posture, Ride } from '#plan/model.ts'
import type { Counts, Effort, KnobSteps, Seconds } from '#units/units.ts'
import type { Load } from './load.ts'
import type { Kind, Passage } from './passage.ts'

/** What a block without a move may be called. */
export type NameKey =
  | 'lowHill'
  | 'seatedClimb'
  | 'standingClimb'
  | 'hoverClimb'
  | 'hover'
  | 'standingFlat'
  | 'standingRun'
  | 'easyFlat'
  | 'flat'
  | 'briskFlat'
  | 'strongFlat'
  | 'steadyFlat'
  | 'tempo'
  | 'seatedHold'
  | 'standingHold'
  | 'recover'
  | 'rollOut'
  | 'stretch'
  | 'jumps'
  | 'push'
  | 'standingPush'
  | 'surge'
  | 'standingSurge'

/** Words of one weight, and the efforts they may be said of. */
export interface LoadWords {
  name: string
  words: RegExp
  least: Effort
  most: Effort
  /** Only with something on the knob, and where the model agrees to within a step. */
  weighted?: true
  knob?: Load['knob']
}

/** Where a text is said, as far as whether it is true there depends on it. */
export type Where = Pick<Passage, 'load' | 'onBeat' | 'role' | 'before' | 'kind' | 'isLast' | 'block'>

/** Words that are true only somewhere, and where that is. */
export type OnlyWhere = readonly [words: RegExp, isThere: (where: Where) => boolean]

/** The efforts of a song that riders are told of. */
export interface Gist {
  /** What the hardest of them is, and how often its kind comes, rounds counted. */
  kind: Kind
  move: string
  moveCounts: number | undefined
  count: number
  /** Efforts of other kinds. */
  others: number
  least: number
  most: number
  effort: number
}

/** Phrases for a move, by what it is looked up by. */
export type OfMove = readonly (readonly [move: RegExp, phrases: readonly string[]])[]

/** Ways to bring riders into a posture. */
export interface PostureWords {
  readonly alone: readonly string[]
  /** With the resistance before it. */
  readonly after: readonly string[]
  /** Whether it may come before the resistance: sitting may, standing may not. */
  readonly first: boolean
}

/** A way out of what a block asks, and one into more. */
export interface OptionOf {
  readonly kind: Kind
  readonly seconds: Seconds
  readonly counts: Counts | undefined
  /** A quarter and a half of what the knob is turned by, in its words. */
  readonly some: string
  readonly more: string
}

/**
 * What a draft says to riders in one language. What is said when, and how much of it, is the same
 * in all of them; a wording is chosen from these lists and never put together from pieces of
 * another language. Everything here is common practice unless a source stands beside it.
 */
export interface Voice {
  /** Lists by the kind of block; those whose words about load do not fit a block are left out where they are chosen. */
  readonly phrases: {
    /** What a call ends with, from light to hard. */
    readonly tails: Readonly<Record<Kind, readonly string[]>>
    /** What a block should feel like, from light to hard. */
    readonly feels: Readonly<Record<Kind, readonly string[]>>
    readonly points: Readonly<Record<Kind, readonly string[]>>
    /** How a move is done, said the first time it is shown; and the same in a word or two, for its call. */
    readonly movePoints: OfMove
    readonly anyMove: readonly string[]
    readonly shortPoints: OfMove
    readonly anyShortPoint: string
    readonly cheer: readonly string[]
    readonly calm: readonly string[]
    readonly thanks: readonly string[]
    /** Stretches, the first side and then the other. */
    readonly stretches: readonly (readonly [first: string, other: string])[]
    /** Welcome to the bike, early in the warm-up: base, knob, and a way to stay in charge. */
    readonly basics: readonly string[]
    readonly drinks: readonly string[]
    /** The saddle is offered to who stands. */
    readonly seats: readonly string[]
    halfway: (isSeated: boolean) => readonly string[]
  }
  /** What words tell. */
  readonly tells: {
    readonly loads: readonly LoadWords[]
    /** How a body is held, which is no load. */
    readonly body: RegExp
    /** A part of the body is named. */
    readonly form: RegExp
    readonly length: RegExp
    /** Seconds, minutes, or effort: of numbers in the middle of a block riders would think that they are its own. */
    readonly numbers: RegExp
    readonly only: readonly OnlyWhere[]
  }
  readonly calls: {
    /** Where the class begins. */
    readonly bases: readonly string[]
    /** What a block is called in where neither knob nor posture changes. */
    readonly begins: Partial<Readonly<Record<Kind, readonly string[]>>>
    /** A size on the bike's scale: "a quarter turn". */
    size: (steps: KnobSteps, bike: Bike) => string
    /** The knob by so many steps, without a period. */
    turned: (way: 'up' | 'down', steps: KnobSteps, bike: Bike) => readonly string[]
    /** The knob to a place, without a period. */
    takenTo: (state: LedgerState, bike: Bike, datum: Ride['datum']) => readonly string[]
    posture: (to: Posture, from: Posture | undefined) => PostureWords
    move: (move: { name: string; counts: Counts; bothSides: boolean; first: Foot }) => readonly string[]
    jumps: (counts: Counts | undefined) => readonly string[]
    /** A new move in one breath with how it is held. */
    held: (move: string, point: string) => string
    readonly swapFoot: readonly string[]
    swapFootTo: (foot: Foot) => readonly string[]
    footLeads: (foot: Foot) => readonly string[]
    /** "Thirty seconds, an eight out of ten." */
    lengths: (effort: { seconds: Seconds; effort: Effort; builds: boolean; counts: Counts | undefined }) => readonly string[]
    plainLengths: (seconds: Seconds) => readonly string[]
    /** A block that gets harder as it goes, up to an effort. */
    builds: (effort: Effort) => readonly string[]
    /** "Second of three, thirty seconds." */
    placeOf: (place: number, of: number, seconds: Seconds) => readonly string[]
    lastUp: (seconds: Seconds) => readonly string[]
    rests: (seconds: Seconds) => readonly string[]
    /** What is left of an effort, in counts: the eights that are told, each with its ways to say it. */
    readonly countsLeft: readonly (readonly [counts: Counts, texts: readonly string[]])[]
    secondsLeft: (left: Seconds) => readonly string[]
    standSoon: (left: Seconds) => readonly string[]
  }
  readonly options: {
    easier: (option: OptionOf) => readonly string[]
    harder: (option: OptionOf) => readonly string[]
  }
  readonly previews: {
    /** A song of work, fuller and then shorter. */
    work: (gist: Gist, isFinish: boolean, ahead: boolean) => readonly string[]
    short: (gist: Gist, ahead: boolean) => readonly string[]
    quiet: (kind: 'coolDown' | 'recovery' | 'warmUp' | 'climb' | 'steady', ahead: boolean) => readonly string[]
    /** The same said of rounds in the block before them. */
    ofRounds: (text: string) => string
  }
  readonly names: {
    block: (name: NameKey) => string
    /** The set whose rounds have such blocks. */
    rounds: (name: NameKey) => string
    /** A move, by what it is looked up by: "jumps on 8", "side leans". */
    move: (move: string, counts: Counts | undefined) => string
  }
}
