import type { Counts, Seconds } from '#units/units.ts'

/** A number a cue speaks: where it stands, what it may mean, and how it would be said with another value. */
export interface Claim {
  /** Half-open range of the text. */
  from: number
  to: number
  /** Likeliest first. The claim is wrong only where the plan bears none of them out. */
  meanings: readonly [Meaning, ...Meaning[]]
  /** The parts of its words that change with the number; empty where another number needs another sentence. */
  slots: readonly Slot[]
}

export type About = Meaning['about']
export type MeaningOf<A extends About> = Extract<Meaning, { about: A }>

/** How a number is meant: as it is, or as a limit or a guess. */
export type Bound = 'under' | 'over' | 'near'

/** What a stretch of time or music has to be for a number to be about it. */
export interface Subject {
  /** Hard or easy, as the words say: "forty easy". */
  quality?: 'hard' | 'easy'
  /** The name of a kind of block, in the singular: "a thirty-second push". */
  kind?: string
  /** "Thirty seconds standing": as long as riders stay so. */
  posture?: true
  /** Words that look ahead: what comes after the next change may be meant too. */
  ahead?: true
}

/** What a stretch of time or music is told in; bars are those of the song. */
export type Unit = 'seconds' | 'counts' | 'bars'

/** What something comes before, where the words say: the next block of a kind, of work or of rest, or in the other posture. */
export interface Target {
  kind?: string
  quality?: 'hard' | 'easy'
  posture?: 'standing' | 'seated'
}

/** What something is left of, or halfway through, where the words say. */
export type Whole = 'class' | 'song' | 'block' | 'set'

/** Whole numbers and amounts; `high` differs from `low` only in a range. */
interface Range {
  low: number
  high: number
}

export type Meaning =
  /** "half a turn on", "take one off": signed, in the bike's unit. `adds` where it goes on top of another change in the same call. */
  | ({ about: 'change'; adds?: true } & Range)
  /** "same gear". */
  | { about: 'stay' }
  /** "up to two and a half", "five to six turns", "seven or more": a place on the scale, from the ride's datum unless `overBase`. */
  | ({ about: 'total'; orMore?: true; overBase?: true } & Range)
  /** "twenty seconds", "for thirty-two counts": how long something lasts. */
  | ({ about: 'length'; unit: Unit; bound?: Bound; on?: Subject; song?: true; class?: true } & Range)
  /** "forty seconds to go", "last eight": from the moment it is said. `midway` where it is one only in the middle of a block. */
  | { about: 'left'; unit: Unit; value: number; of?: Whole; near?: true; midway?: true }
  /** "a minute down", "twelve minutes in". */
  | { about: 'gone'; value: Seconds; of?: Whole; near?: true }
  /** "in twenty seconds we push", "sixteen counts till we push". */
  | ({ about: 'until'; unit: Unit; value: number } & Target)
  /** "halfway", "two thirds done": the part that is behind, 0–1. */
  | { about: 'share'; value: number; of?: Whole }
  /** "it's 6:34", "we finish at five to seven": minutes of a twelve-hour clock, or of the day where `of24`. */
  | { about: 'clock'; minute: number; of24: boolean; at: 'now' | 'end' }
  /** "three rounds", "four times", "two sets". */
  | { about: 'rounds'; value: number; kind?: 'set' }
  /** "three pushes", "four of these": how many are to come; `fresh` where it is that only before the first of them. */
  | { about: 'ahead'; value: number; kind?: string; fresh?: true }
  /** "two more", "one left", "two more after this": how many are still to come; `after` this one, which is not counted. */
  | { about: 'more'; value: number; kind?: string; after?: true }
  /** "one down", "that was one of three". */
  | { about: 'done'; value: number; kind?: string; of?: number }
  /** "push two", "first of three": the place in a row, from its start. */
  | { about: 'place'; value: number; kind?: string; of?: number }
  /** "last one" (0), "next to last" (1): the place from the row's end; `value` where it is told from the start too, `past` where it is behind. */
  | { about: 'last'; back: number; kind?: string; value?: number; of?: number; past?: true }
  /** "on fours", "eight up, eight down", "two bars up, two bars down": how long each part of the move is. */
  | { about: 'moveCounts'; value: Counts; unit?: Unit }
  /** "four of each": how often each side of a move is done. */
  | { about: 'each'; value: number }
  /** "sixteen leans": how often the block's move is done. */
  | { about: 'repeats'; value: number }
  /** "a seven out of ten". */
  | ({ about: 'effort'; on?: Subject } & Range)
  /** "legs at ninety", in rpm. */
  | ({ about: 'cadence'; near?: true; on?: Subject } & Range)
  /** "128 bpm". */
  | { about: 'tempo'; value: number }

/** Which number of a claim a slot says. */
export type Figure = 'low' | 'high' | 'of'

/** A part of the text that says one number, and how it says it. */
export interface Slot {
  from: number
  to: number
  figure: Figure
  form: Form
}

/** How a number is said, so that another can be said the same way. */
export type Form =
  /** A whole number of `per` each ("four eights": 8), with the noun that has to agree with it. */
  | { as: 'number'; figures: boolean; per: number; noun?: { from: number; to: number } }
  /** "second", "2nd". */
  | { as: 'ordinal'; figures: boolean }
  /** "fours", "8s". */
  | { as: 'plural'; figures: boolean }
  /** A size or a place on the bike's scale: with its unit in it, or without; `article` where it had one or could have. */
  | { as: 'amount'; figures: boolean; decimal: boolean; unit?: string; article: boolean }
  /** A time: bare, in seconds, in minutes, as 0:45, and whether it stands before a noun ("a thirty-second push"). */
  | { as: 'duration'; figures: boolean; unit: 'bare' | 'seconds' | 'short' | 'minutes' | 'clock'; adjective: boolean }
  /** "on" and "off". */
  | { as: 'direction' }
  /** "6:34" on the wall. */
  | { as: 'wallClock'; of24: boolean }

/** The numbers a claim would have to say, by figure; of a direction the sign of `low` counts. */
export type Figures = Partial<Record<Figure, number>>
