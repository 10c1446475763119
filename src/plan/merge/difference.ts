/** One of the two rides that are brought together: the one being worked on, and the one that came back. */
export type Side = 'mine' | 'theirs'

export const otherSide = (side: Side): Side => (side === 'mine' ? 'theirs' : 'mine')

/** Who made a difference since the common base: one side alone, both alike, or both in different ways. */
export type Origin = Side | 'both' | 'conflict'

/**
 * Where in a ride: the ids of the section, of the block or set in it, of the part of the
 * set, and of the cue, as far down as it goes. Empty for the ride itself.
 */
export interface PlaceInRide {
  sectionId?: string
  itemId?: string
  partId?: string
  cueId?: string
}

export type Thing = 'section' | 'set' | 'block' | 'cue'

/** A position in a list: inside which section, set or block, and behind which neighbour; null at the head. */
export interface Spot {
  /** Id of the section, set or block that holds the list; null for the ride's own list of sections. */
  in: string | null
  after: string | null
}

interface Told {
  /** Equal for the same difference whichever side asks; the key of a choice. */
  id: string
  by: Origin
  /** Which side's answer is in the merged ride. */
  chosen: Side
  /** In the side that has it; in mine where both have. */
  place: PlaceInRide
}

/** A value said differently. Absent values are undefined. */
export interface FieldDifference extends Told {
  kind: 'field'
  of: Thing | 'ride'
  /** The name of the field in the document; `song.title` and `houseRules.…` for one inside another. */
  field: string
  base: unknown
  mine: unknown
  theirs: unknown
}

/** Something only one side has and the base had not; what stands in it came with it. */
interface AddedDifference extends Told {
  kind: 'added'
  of: Thing
  addedBy: Side
}

/** Something one side took out; a conflict where the other worked on it or in it. What stood in it goes or stays with it. */
interface DeletedDifference extends Told {
  kind: 'deleted'
  of: Thing
  deletedBy: Side
}

/** Something put elsewhere. */
interface MovedDifference extends Told {
  kind: 'moved'
  of: Thing
  base: Spot | undefined
  mine: Spot
  theirs: Spot
}

/** Both rides together are more than one document holds, so one of the two has to be chosen as it stands. */
interface WholeDifference extends Told {
  kind: 'whole'
}

export type Difference = FieldDifference | AddedDifference | DeletedDifference | MovedDifference | WholeDifference

/** What was chosen, by the id of the difference; what is not in it is decided as `mergeRides` says. */
export type Choices = Readonly<Record<string, Side>>
