import type { UNSHARED } from '#plan/link/shareable.ts'
import type { Block, Cue, Leader, Ride, Section, SetBlock, Song, StandIn } from '#plan/model.ts'

type Named<Prefix extends string, Fields> = {
  readonly [Key in keyof Fields & string as `${Prefix}.${Key}`]-?: Exclude<Fields[Key], undefined>
}

type Given<Fields> = { readonly [Key in keyof Fields]-?: Exclude<Fields[Key], undefined> }

/** What is decided elsewhere, or never: whose ride it is, what it is made of, and what only its owner keeps. */
type NotOfRide =
  | 'schema'
  | 'id'
  | 'parent'
  | 'ancestors'
  | 'sections'
  | 'houseRules'
  | 'standIn'
  | Exclude<(typeof UNSHARED)[number], 'privateNotes'>

/**
 * The values that are decided one by one (`spreadOf`), by kind of thing and field. Rules of the studio and riders have names
 * of somebody's own and are not among them.
 */
interface FieldValues {
  ride: Given<Omit<Ride, NotOfRide>> & Named<'standIn', StandIn> & Named<'leader', Omit<Leader, 'id'>>
  section: Given<Omit<Section, 'id' | 'blocks' | 'song' | 'inCount' | 'outCount'>> &
    Named<'song', Omit<Song, 'id'>> & {
      readonly song: Pick<Section, 'song' | 'inCount' | 'outCount'>
      readonly ridden: Pick<Section, 'inCount' | 'outCount'>
    }
  set: Given<Omit<SetBlock, 'id' | 'parts'>>
  block: Given<Omit<Block, 'id' | 'cues' | 'minEights' | 'maxEights'>> & { readonly eights: Pick<Block, 'minEights' | 'maxEights'> }
  cue: Given<Omit<Cue, 'id'>>
}

/** "block effort": a field with what it is of. */
export type FieldName = { [Of in keyof FieldValues]: `${Of} ${keyof FieldValues[Of] & string}` }[keyof FieldValues]

/** What stands in a field. */
export type ValueOf<Name extends FieldName> = Name extends `${infer Of extends keyof FieldValues} ${infer Field}`
  ? Field extends keyof FieldValues[Of]
    ? FieldValues[Of][Field]
    : never
  : never
