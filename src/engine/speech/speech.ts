import type { Claim, Figures, Meaning } from '#engine/cues/claims/claim.ts'
import type { OtherCall } from '#engine/cues/claims/plan/verdict.ts'
import type { Token } from '#engine/cues/tokens.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Bike, Block, Change, Foot, Posture } from '#plan/model.ts'
import type { KnobSteps, Rpm, Seconds } from '#units/units.ts'
import type { Language } from '#words/language.ts'

/**
 * One language riders are spoken to in: what the engine says in it, and what it understands of it.
 * Whoever writes or reads cues asks `speechOf(ride)` for the one of the ride; the words of the page
 * are another thing and stand in the catalogue.
 */
export interface Speech {
  readonly language: Language
  readonly numbers: SpokenNumbers
  readonly calls: SpokenCalls
  readonly sounds: SpokenSounds
  readonly told: Told
  readonly names: SpokenNames
  readonly sentences: SpokenSentences
  /** What the numbers of a cue claim, and how they are put right. */
  readonly grammar: Grammar
}

/** What words need to know of a bike's scale. */
export type Scale = Pick<Bike, 'unit' | 'stepsPerUnit'>

interface SpokenNumbers {
  /** A whole number from 0 to 999 in words; larger ones stay figures. */
  whole: (value: number) => string
  /** A size on the scale as it is said of a change: "a quarter turn", "one and a quarter". */
  size: (steps: KnobSteps, scale: Scale) => string
  /** A place on the scale as it is said of a total: "three", "one and a half". */
  place: (steps: KnobSteps, scale: Scale) => string
}

/** How a change of pace is called for. */
export type PaceStep =
  /** A ramp over the block. */
  | { readonly kind: 'ramp'; readonly up: boolean; readonly rpm: Rpm }
  /** Up or down to a pace and back, as the song goes. */
  | { readonly kind: 'withMusic'; readonly up: boolean; readonly rpm: Rpm; readonly back: Rpm }
  /** Other strikes to a beat. */
  | { readonly kind: 'time'; readonly up: boolean }
  | { readonly kind: 'step'; readonly up: boolean; readonly rpm: Rpm }

export interface SpokenCalls {
  readonly stay: string
  readonly allOff: string
  /** "one and a quarter on", "half a turn off"; `stay` for none. */
  change: (steps: KnobSteps, scale: Scale) => string
  /** The same as it is asked for: "at least half a turn on", "half a turn on if you have it". */
  asked: (mode: Change['mode'], change: string) => string
  /** "to three", "to three to four", "to at least three"; under the datum "to a quarter under base". */
  total: (state: LedgerState, scale: Scale, datum: 'base' | 'loose') => string
  /** "by feel, three to four" */
  byFeel: (state: LedgerState, scale: Scale, datum: 'base' | 'loose') => string
  /** On another bike, whose reading is rounded: "to about three", "to at least about three". */
  about: (state: LedgerState, scale: Scale, datum: 'base' | 'loose') => string
  /** What cannot be read on another bike: "by feel, heavier: solid hill". */
  feltWay: (way: -1 | 0 | 1, feel: string) => string
  /** Written small, beside the words. */
  readonly small: SmallCalls
  posture: (posture: Posture) => string
  foot: (foot: Foot) => string
  move: (move: NonNullable<Block['move']>) => string
  pace: (step: PaceStep) => string
  /** As a round begins: how many there are to go, this one included: "four" … "last one". */
  round: (left: number) => string
}

export interface SmallCalls {
  readonly stay: string
  readonly allOff: string
  readonly byFeel: string
  /** "+¾", "−1¼"; `stay` for none. */
  change: (steps: KnobSteps, scale: Scale) => string
  asked: (mode: Change['mode'], change: string) => string
  /** A running total: "1½", "3–4", "4¼ or more", "3 or less"; "2 or so" where both ends are open. */
  total: (state: LedgerState, scale: Pick<Scale, 'stepsPerUnit'>) => string
  /** "to 3–4" */
  to: (total: string) => string
  /** "to 3–4 by feel" */
  toByFeel: (total: string) => string
  /** "about 12" */
  about: (total: string) => string
}

interface SpokenSounds {
  /** Of a word in lower case, in Latin letters. */
  syllables: (word: string) => number
  /** Consonants as they are heard, in clusters and alone. */
  consonants: (word: string) => number
  /** The words figures are said as; null for what is no figure. */
  figures: (word: string) => string[] | null
  readonly plus: string
  readonly minus: string
  readonly percent: string
  /** How long a syllable and a consonant take, as shares of what the constants have, which are fitted to English. */
  readonly length: { readonly syllable: number; readonly consonant: number }
}

/** What words tell beside their numbers. */
export interface Told {
  /** Riders are told to drink now. */
  drink: (text: string) => boolean
  /** Staying in the saddle is offered: always, or only to riders who stand. */
  seat: (text: string) => 'always' | 'whereRidersStand' | 'never'
  /** The saddle is named. */
  seated: (text: string) => boolean
  /** What the resistance feels like. */
  feel: (text: string) => boolean
  /** How the body does it. */
  form: (text: string) => boolean
  /** How hard it is going to be. */
  effort: (text: string) => boolean
  /** A length in music instead of time. */
  music: (text: string) => boolean
  /** Where in the text riders are told to rise; −1 where they are not. */
  rising: (text: string) => number
}

interface SpokenNames {
  /** The kind of block a word names, one for all its forms: "pushes" is "push". */
  kind: (word: string) => string
  /** Words inside a name that say nothing of its kind: "jumps on 8". */
  readonly joints: ReadonlySet<string>
  /** Words that announce a block and say nothing of it: "Push next." */
  readonly announcing: ReadonlySet<string>
  /** How a sentence goes on that cannot lose its beginning. */
  readonly goesOn: RegExp
  /** Words a number of turns is said with or without: "half a turn on", "half turn on". */
  readonly fillers: ReadonlySet<string>
}

export interface SpokenSentences {
  /** Form points to begin with; meant to be replaced by the leader's own. */
  readonly formPoints: readonly string[]
  /** How a move is done, for when it is first shown. */
  moveForm: (move: string) => string
  /** The last words of a class. */
  readonly closing: string
  /** What holds for every rider, said before the first song. */
  readonly inTheRoom: string
  readonly atHome: string
  /** What is coming, in one sentence. */
  coming: (plan: ComingClass) => string
  /** A length added to an announcement: "two minutes", "forty-five seconds". */
  length: (seconds: Seconds) => string
  /** An easier option: so much less on the knob, or base, at the same cadence. */
  lighter: (size: string | null) => string
  /** An offer put behind another: "easy pace; or stay seated". */
  orSeated: (option: string | undefined) => string
}

export interface ComingClass {
  readonly minutes: number
  readonly efforts: number
  /** Rounded up already, so that "none longer than" is true. */
  readonly longest: Seconds
  /** The minute the hardest comes at; null where nothing is hard. */
  readonly hardestAt: number | null
}

export interface Grammar {
  /**
   * The numbers a text speaks. What the grammar does not understand it leaves alone.
   *
   * @param unit the bike's own unit, in lower case
   */
  read: (tokens: readonly Token[], unit: string) => Claim[]
  /** The changes that make a claim say other numbers, each in the form of the old one; null where the sentence would have to be another. */
  rewrite: (text: string, claim: Claim, figures: Figures, scale: Scale) => Edit[] | null
  /** What the plan has, in words of its own. */
  planned: (meaning: Meaning, right: Figures, call: OtherCall | undefined, scale: Scale) => string
  /** A call put in the place of another, without a word that stands before it already: `before` is what does. */
  fitting: (old: string, before: string, words: string) => string
  /** What leads up to a total and is part of its call: "back to". */
  readonly leading: RegExp
}

/** One stretch of a text and what stands there instead. */
export interface Edit {
  readonly from: number
  readonly to: number
  readonly text: string
}
