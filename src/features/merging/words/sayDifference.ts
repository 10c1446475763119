import type { RideReport } from '#engine/report.ts'
import { sameValue } from '#plan/edits.ts'
import { type Difference, otherSide, type PlaceInRide, type Side, type Spot } from '#plan/merge/difference.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import { type Bike, isSet, type Ride } from '#plan/model.ts'
import { itemName, lengthText, sectionName } from '#plan/names.ts'
import { findBlock, findItem, findSection } from '#plan/places.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import { sayField } from './sayField.ts'
import { sayValue } from './sayValue.ts'

/** The rides a difference is told from, with the plan of each. */
export interface Telling {
  base: Ride | null
  mine: Ride
  theirs: Ride
  /** The bike that differing steps are counted on: the merged ride's. */
  bike: Bike
  reports: { mine: RideReport; theirs: RideReport }
}

/** A difference in the trade's words. */
export interface Told {
  /** The section it is in; undefined for the ride itself. */
  sectionId: string | undefined
  /** The block, set or cue it is about; undefined for the section or the ride itself. */
  where: string | undefined
  /** When that is on the ride clock, in mine where both have it. */
  at: Seconds | undefined
  /** What differs: the field, or what was done. */
  what: string
  base: string
  mine: string
  theirs: string
}

/** Tells a difference. */
export function sayDifference(difference: Difference, telling: Telling): Told {
  const about = whereabouts(difference.place, telling)
  switch (difference.kind) {
    case 'field': {
      const { of, field, base, mine, theirs } = difference
      const say = (value: unknown, ride: Ride | null) =>
        ride ? sayValue(of, field, value, { leaders: ride.leaders, bike: telling.bike, eight: eightIn(ride, difference.place) }) : ''
      const said = { base: say(base, telling.base), mine: say(mine, telling.mine), theirs: say(theirs, telling.theirs) }
      return { ...about, what: sayField(of, field), ...toldApart({ base, mine, theirs }, said) }
    }
    case 'added':
      return {
        ...about,
        what: added(difference, telling[difference.addedBy]),
        ...both(difference.addedBy, words.merging.there, words.merging.notThere),
        base: words.merging.notThere,
      }
    case 'deleted': {
      const { there, removed } = words.merging
      const kept = difference.by === 'conflict' ? words.merging.thereChanged(workedOn(difference, telling)) : there
      return { ...about, what: doneTo(difference), ...both(difference.deletedBy, removed, kept), base: there }
    }
    case 'moved': {
      const lists = new Set([difference.base, difference.mine, difference.theirs].flatMap((spot) => (spot ? [spot.in] : [])))
      const say = (spot: Spot | undefined, ride: Ride | null) => (spot && ride ? sayPlace(spot, ride, lists.size > 1) : '')
      return {
        ...about,
        what: words.merging.moved,
        base: say(difference.base, telling.base),
        mine: say(difference.mine, telling.mine),
        theirs: say(difference.theirs, telling.theirs),
      }
    }
    case 'whole':
      return {
        ...about,
        what: words.merging.tooMuch,
        base: '',
        mine: words.merging.allOfMine,
        theirs: words.merging.allOfTheirs,
      }
  }
}

/** Answers that differ never read the same: where their words do, theirs says that more differs than is written out. */
function toldApart(values: Answers<unknown>, said: Answers<string>): Answers<string> {
  const reads = (a: keyof Answers<unknown>, b: keyof Answers<unknown>) => said[a] === said[b] && !sameValue(values[a], values[b])
  const other = (value: string) => words.merging.otherDetails({ value })
  return {
    base: said.base,
    mine: reads('mine', 'base') ? other(said.mine) : said.mine,
    theirs: reads('theirs', 'mine') || reads('theirs', 'base') ? other(said.theirs) : said.theirs,
  }
}

type Answers<Value> = Record<'base' | Side, Value>

const both = (side: Side, one: string, other: string) => ({ mine: side === 'mine' ? one : other, theirs: side === 'theirs' ? one : other })

function whereabouts(place: PlaceInRide, { mine, theirs, reports }: Telling): Pick<Told, 'sectionId' | 'where' | 'at'> {
  const id = place.partId ?? place.itemId
  const isMine = id === undefined ? place.sectionId === undefined || findSection(mine, place.sectionId) : findIn(mine, id)
  const [ride, report] = isMine ? [mine, reports.mine] : [theirs, reports.theirs]
  const item = id === undefined ? undefined : findIn(ride, id)
  const name = item && tell(itemName(item))
  return {
    sectionId: place.sectionId,
    where: place.cueId === undefined || name === undefined ? name : words.merging.cueAt({ block: name }),
    at: startOf(report, place),
  }
}

/** The block or set of that id, wherever it stands. */
const findIn = (ride: Ride, id: string) => findItem(ride, id)?.item ?? findBlock(ride, id)?.block

/** When a place begins on the ride clock; undefined for the ride itself. */
export function startOf(report: RideReport, { sectionId, itemId, partId }: PlaceInRide): Seconds | undefined {
  const id = partId ?? itemId
  if (id === undefined) return report.sections.find((section) => section.sectionId === sectionId)?.from
  return report.blocks.find(({ block, set }) => block.id === id || set?.set.id === id)?.from
}

/** "new block, 4 eights, effort 6" */
function added({ of, place }: Extract<Difference, { kind: 'added' }>, ride: Ride): string {
  const { sectionId, itemId, partId, cueId } = place
  const id = partId ?? itemId
  const { merging, mergeFields } = words
  if (cueId !== undefined) {
    const cue = id === undefined ? undefined : findBlock(ride, id)?.block.cues.find((one) => one.id === cueId)
    if (cue) return merging.newCue({ text: cue.text })
  } else if (id === undefined) {
    const section = sectionId === undefined ? undefined : findSection(ride, sectionId)
    if (section) return merging.newSong({ blocks: section.blocks.length })
  } else {
    const item = findIn(ride, id)
    if (item && isSet(item)) return merging.newSet({ rounds: item.rounds })
    if (item)
      return merging.newBlock({ length: tell(lengthText(item.length, eightIn(ride, place))), effort: mergeFields.effort(item.effort) })
  }
  return merging.done({ thing: of, done: 'added' })
}

/** What the song of a place counts by. */
const eightIn = (ride: Ride, { sectionId }: PlaceInRide): Counts =>
  eightOf((sectionId === undefined ? undefined : findSection(ride, sectionId))?.song?.grid)

/** What the side that kept a thing did to it or in it, the first few: effort, length. */
function workedOn({ deletedBy, place }: Extract<Difference, { kind: 'deleted' }>, { base, ...rides }: Telling) {
  const kept = rides[otherSide(deletedBy)]
  const within = mergeRides(base, kept, base ?? kept).own.filter((difference) => isWithin(difference.place, place))
  const changes = [...new Set(within.map(doneTo))]
  return { changes: changes.slice(0, MOST_NAMED), more: changes.length > MOST_NAMED }
}

const MOST_NAMED = 3

function doneTo(difference: Difference): string {
  if (difference.kind === 'whole') return words.merging.tooMuch
  if (difference.kind === 'field') return sayField(difference.of, difference.field)
  return words.merging.done({ thing: difference.of, done: difference.kind })
}

/** Whether a place is another or in it. */
const isWithin = (inner: PlaceInRide, outer: PlaceInRide): boolean =>
  (['sectionId', 'itemId', 'partId', 'cueId'] as const).every((key) => outer[key] === undefined || inner[key] === outer[key])

/** "after seated climb in Long Way Up" */
function sayPlace(spot: Spot, ride: Ride, isElsewhere: boolean): string {
  const nameOf = (id: string): string | undefined => {
    const section = findSection(ride, id)
    if (section) return tell(sectionName(ride, section))
    const item = findIn(ride, id)
    return item && tell(itemName(item))
  }
  const list = isElsewhere && spot.in !== null ? nameOf(spot.in) : undefined
  return spot.after === null ? words.merging.first({ list }) : words.merging.after({ neighbor: nameOf(spot.after), list })
}
