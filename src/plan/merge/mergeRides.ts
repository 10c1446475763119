import { parseRide } from '#plan/document/parseRide.ts'
import { withoutGoneMarks } from '#plan/document/shaky.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { assemble } from './assemble.ts'
import { commonGround } from './commonGround.ts'
import { type Decisions, newDecisions } from './decisions.ts'
import type { Choices, Difference } from './difference.ts'
import { decideExistence, type Trees } from './existence.ts'
import { keepIdentity } from './keepIdentity.ts'
import { mergeFields } from './mergeFields.ts'
import { mergeLeaders } from './mergeLeaders.ts'
import { mergeOwn } from './mergeOwn.ts'
import { movedIn } from './movedIn.ts'
import { onOneScale, type Three } from './onOneScale.ts'
import { placeAll } from './placement.ts'
import { gatherRide, type Has, OWN, spreadRide } from './spread.ts'
import { originOf } from './threeWay.ts'
import { treeOf } from './tree.ts'

/** Two rides brought together. */
export interface Merge {
  /** A ride that opens: with every choice made so far, and for the rest with mine, or with what would else be lost. */
  merged: Ride
  /** Whether a common base was known. Without one no side can be told to have changed anything. */
  based: boolean
  /** What they alone did. It is in the merged ride unless it was left. */
  taken: Difference[]
  /** What I alone did. It is in the merged ride already. */
  own: Difference[]
  /** What both did alike. */
  alike: Difference[]
  /** What both did differently; every one can be chosen. */
  conflicts: Difference[]
}

/**
 * Brings two rides together that were made from a common base.
 *
 * Values are compared one by one (`spreadOf` says what is one value), things by their ids,
 * and lists by what moved in them. What one side changed is taken, what both changed alike
 * once; what both changed differently is a conflict, decided by `choices`, else for mine.
 * Taking out what the other side worked on is a conflict too, decided for keeping it.
 * Swapping the sides gives the same ride, with every choice swapped, and the same conflicts.
 *
 * What is mine alone stays mine: the id, what the ride was made from, the riders, the
 * blocks marked as shaky and the private notes. Everything derived, such as calls, feet and totals, is for the engine to
 * compute anew; calls are kept as what is said, so a total stays the total that was meant.
 *
 * Without a base (null) it is a comparison: every difference can be chosen, and nothing of
 * theirs is taken by itself.
 *
 * @param choices by the id of a difference: whose answer stands. Also for what only one side
 *   did, to leave it out.
 * @param keepers two people, or one who has the ride in two places: then what is mine alone is
 *   brought together like the rest.
 * @returns a ride that `parseRide` takes. Cost: as of reading the three rides, and the square
 *   of the longest list.
 */
export function mergeRides(
  base: Ride | null,
  mine: Ride,
  theirs: Ride,
  choices: Choices = {},
  keepers: 'two people' | 'one person' = 'two people',
): Merge {
  const decisions = newDecisions(choices, base !== null)
  const merged = mergeAll({ base, mine, theirs }, decisions, keepers === 'one person')
  const parsed = parseRide(merged)
  // Two rides near the limits of a document can be beyond them together.
  const ride = parsed.ok ? keepIdentity(mine, merged) : wholeRide(mine, theirs, decisions)
  const by = (origin: Difference['by']) => decisions.all.filter((difference) => difference.by === origin)
  return { merged: ride, based: base !== null, taken: by('theirs'), own: by('mine'), alike: by('both'), conflicts: by('conflict') }
}

function mergeAll(three: Three, decisions: Decisions, isOneKeeper: boolean): Ride {
  const scaled = onOneScale(three, decisions)
  const { base, mine, theirs } = scaled
  const trees = treesOf(scaled)
  const existence = decideExistence(trees, decisions)
  const placings = placeAll(trees, existence, decisions)
  const sections = assemble(trees, placings, decisions)
  const values = { base: base ? spreadRide(base) : undefined, mine: spreadRide(mine), theirs: spreadRide(theirs) }
  const fields = mergeFields(values, { id: 'ride', of: 'ride', place: {} }, decisions)
  const has = (field: keyof Has) => {
    const isTheirs = base !== null && originOf(!!base[field], !!mine[field], !!theirs[field]) === 'theirs'
    return (isTheirs ? theirs : mine)[field] !== undefined
  }
  const head = gatherRide(mine, fields, { houseRules: has('houseRules'), standIn: has('standIn') })
  const own = isOneKeeper ? mergeOwn(scaled, decisions) : {}
  return withoutGoneMarks(withKnownLeaders(patched(head, { ...own, sections, leaders: mergeLeaders(scaled, decisions) })))
}

function treesOf({ base, mine, theirs }: Three): Trees {
  const [ours, others] = [treeOf(mine), treeOf(theirs)]
  const common = base ? treeOf(base) : commonGround(ours, others)
  return { base: common, mine: ours, theirs: others, moved: { mine: movedIn(ours, common), theirs: movedIn(others, common) } }
}

/** Who is no leader of the ride leads no block of it. */
function withKnownLeaders(ride: Ride): Ride {
  const known = new Set(ride.leaders.map(({ id }) => id))
  const ofRide = (id: string | undefined) => (id !== undefined && known.has(id) ? id : undefined)
  return editSections(ride, (section) =>
    editBlocksOf(section, (block) => patched(block, { leader: ofRide(block.leader), mic: ofRide(block.mic) })),
  )
}

function wholeRide(mine: Ride, theirs: Ride, decisions: Decisions): Ride {
  if (decisions.decide({ kind: 'whole', id: 'whole ride', by: 'conflict', place: {} }) === 'mine') return mine
  const own = Object.fromEntries(OWN.map((key) => [key, mine[key]])) as Partial<Ride>
  return withoutGoneMarks(patched(theirs, own))
}
