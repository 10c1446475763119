import type { Block, Hands, Length, Move, Posture, Resistance, Ride, Section, StrikesPerBeat, Terrain } from '#plan/model.ts'
import type { Counts, KnobSteps } from '#units/units.ts'
import type { Span } from './tokens.ts'

export type { Block, Foot, Hands, Posture, Terrain } from '#plan/model.ts'
export type Strikes = StrikesPerBeat

/** What a line is read and written for. */
export interface LineContext {
  readonly ride: Ride
  /** The section the block stands in or is to stand in. */
  readonly section: Section
}

/** All that a line can say of a block. */
export interface LineFields {
  readonly terrain: Terrain
  readonly posture: Posture
  readonly hands: Hands
  readonly length?: Length
  readonly resistance?: Resistance
  readonly effort?: Block['effort']
  readonly cadence?: Block['cadence']
  readonly strikesPerBeat?: StrikesPerBeat
  readonly lead?: Block['lead']
  readonly move?: Move
  readonly allOut?: true
  readonly water?: true
  readonly walk?: true
}

/** The same as a list, in the order a line is written. */
export const LINE_FIELDS = [
  'terrain',
  'posture',
  'hands',
  'length',
  'resistance',
  'cadence',
  'strikesPerBeat',
  'effort',
  'lead',
  'move',
  'allOut',
  'water',
  'walk',
] as const satisfies readonly (keyof LineFields)[]

/** Why a part of a line was not taken, and where it stands. */
export type LineProblem = Span & { readonly word: string } & (
    | { readonly kind: 'unknown' | 'twice' | 'needsNumber' | 'noKind' | 'howLong' | 'onOrOff' | 'needsMove' | 'tooLong' }
    | { readonly kind: 'effortOutside' | 'rpmOutside' | 'countsOutside' | 'lengthOutside' | 'roundsOutside' }
    | { readonly kind: 'noSuchStep'; readonly low: KnobSteps; readonly high: KnobSteps; readonly stepsPerUnit: number }
    | { readonly kind: 'partOfCount'; readonly unit: Counts }
  )
