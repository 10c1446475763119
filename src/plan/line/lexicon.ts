import type { Foot, Hands, Posture, Terrain } from '#plan/model.ts'

/** Moves a line can name, by what they are stored as in a ride spoken in English. */
export const LINE_MOVES = [
  'jump',
  'travel-back',
  'lean',
  'side lean',
  'press',
  'pulse',
  'corner',
  'around the clock',
  'shoulder rolls',
] as const
export type LineMove = (typeof LINE_MOVES)[number]

/** What joins the numbers of a line to what they mean. */
export type Mark =
  | 'effort'
  | 'to'
  | 'add'
  | 'takeOff'
  | 'on'
  | 'off'
  | 'moveOn'
  | 'unit'
  | 'atLeast'
  | 'orMore'
  | 'ifYouHaveIt'
  | 'byFeel'
  | 'stay'
  | 'allOff'
  | 'check'
  | 'aim'
  | 'times'
  | 'eights'
  | 'counts'
  | 'phrases'
  | 'rounds'
  | 'seconds'
  | 'minutes'
  | 'rpm'
  | 'filler'

export type Ways = readonly [written: string, ...others: string[]]

/** The words of typed lines in one language. The first of several ways to say a thing is the one lines are written with. */
export interface Lexicon {
  readonly terrain: Readonly<Record<Terrain, Ways>>
  readonly posture: Readonly<Record<Posture, Ways>>
  readonly hands: Readonly<Record<Hands, Ways>>
  readonly moves: Readonly<Record<LineMove, Ways>>
  readonly noMove: Ways
  readonly side: Readonly<Record<Foot, Ways>>
  readonly alternate: Ways
  readonly lead: Readonly<Record<'keep' | 'swap' | Foot, Ways>>
  readonly strikes: Readonly<Record<'half' | 'one' | 'double' | 'off', Ways>>
  readonly legsStill: Ways
  readonly noCadence: Ways
  readonly allOut: Ways
  readonly water: Ways
  readonly walk: Ways
  readonly marks: Readonly<Record<Mark, Ways>>
  /** Numbers in words: "half" is 0.5. */
  readonly numbers: Readonly<Record<string, number>>
  /** What is added to the number before it: "and a half" is 0.5. */
  readonly additions: Readonly<Record<string, number>>
  /** Around what is said. Any pair is read. */
  readonly quotes: readonly [open: string, close: string]
  /** "." or ",". Both are read. */
  readonly point: string
}
