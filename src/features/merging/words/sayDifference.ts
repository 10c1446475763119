import type { RideReport } from '#engine/report.ts'
import { sameValue } from '#plan/edits.ts'
import { type Difference, otherSide, type PlaceInRide, type Side, type Spot } from '#plan/merge/difference.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import { type Bike, isSet, type Ride } from '#plan/model.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import { findBlock, findItem, findSection } from '#plan/places.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { sayLength } from '#plan/words.ts'
import { formatEffort } from '#units/formatEffort.ts'
import { plural } from '#units/plural.ts'
import type { Counts, Seconds } from '#units/units.ts'
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
    case 'added': {
      const added = `new ${difference.of}${contentOf(difference.place, telling[difference.addedBy])}`
      return { ...about, what: added, ...both(difference.addedBy, 'there', 'not there'), base: 'not there' }
    }
    case 'deleted': {
      const there = difference.by === 'conflict' ? `there, ${workedOn(difference, telling)}` : 'there'
      return { ...about, what: `${difference.of} taken out`, ...both(difference.deletedBy, 'taken out', there), base: 'there' }
    }
    case 'moved': {
      const lists = new Set([difference.base, difference.mine, difference.theirs].flatMap((spot) => (spot ? [spot.in] : [])))
      const say = (spot: Spot | undefined, ride: Ride | null) => (spot && ride ? sayPlace(spot, ride, lists.size > 1) : '')
      return {
        ...about,
        what: 'moved',
        base: say(difference.base, telling.base),
        mine: say(difference.mine, telling.mine),
        theirs: say(difference.theirs, telling.theirs),
      }
    }
    case 'whole':
      return {
        ...about,
        what: 'both together are more than one ride can hold',
        base: '',
        mine: 'my ride as it is',
        theirs: 'theirs as it is',
      }
  }
}

/** Answers that differ never read the same: where their words do, theirs says that more differs than is written out. */
function toldApart(values: Answers<unknown>, said: Answers<string>): Answers<string> {
  const reads = (a: keyof Answers<unknown>, b: keyof Answers<unknown>) => said[a] === said[b] && !sameValue(values[a], values[b])
  const other = (words: string) => `${words}, with other details`
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
  const name = item && nameOfItem(item)
  return {
    sectionId: place.sectionId,
    where: place.cueId === undefined ? name : `cue at ${name}`,
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

/** ", 4 eights at effort 6" */
function contentOf(place: PlaceInRide, ride: Ride): string {
  const { sectionId, itemId, partId, cueId } = place
  const id = partId ?? itemId
  if (cueId !== undefined) {
    const cue = id === undefined ? undefined : findBlock(ride, id)?.block.cues.find((one) => one.id === cueId)
    return cue ? `: “${cue.text}”` : ''
  }
  if (id === undefined) {
    const section = sectionId === undefined ? undefined : findSection(ride, sectionId)
    return section ? ` with ${plural(section.blocks.length, 'block')}` : ''
  }
  const item = findIn(ride, id)
  if (!item) return ''
  if (isSet(item)) return ` of ${plural(item.rounds, 'round')}`
  const { from, to } = item.effort
  return `, ${sayLength(item.length, eightIn(ride, place))}, effort ${from === to ? formatEffort(from) : `${formatEffort(from)} to ${formatEffort(to)}`}`
}

/** What the song of a place counts by. */
const eightIn = (ride: Ride, { sectionId }: PlaceInRide): Counts =>
  eightOf((sectionId === undefined ? undefined : findSection(ride, sectionId))?.song?.grid)

/** What the side that kept a thing did to it or in it: "changed: effort, length". */
function workedOn({ deletedBy, place }: Extract<Difference, { kind: 'deleted' }>, { base, ...rides }: Telling): string {
  const kept = rides[otherSide(deletedBy)]
  const within = mergeRides(base, kept, base ?? kept).own.filter((difference) => isWithin(difference.place, place))
  const words = new Set(
    within.map((difference) => (difference.kind === 'field' ? sayField(difference.of, difference.field) : doneTo(difference))),
  )
  return `changed: ${[...words].slice(0, MOST_NAMED).join(', ')}${words.size > MOST_NAMED ? ' and more' : ''}`
}

const MOST_NAMED = 3

const doneTo = (difference: Difference): string => ('of' in difference ? `${difference.of} ${difference.kind}` : difference.kind)

/** Whether a place is another or in it. */
const isWithin = (inner: PlaceInRide, outer: PlaceInRide): boolean =>
  (['sectionId', 'itemId', 'partId', 'cueId'] as const).every((key) => outer[key] === undefined || inner[key] === outer[key])

/** "after seated climb in Long Way Up" */
function sayPlace(spot: Spot, ride: Ride, isElsewhere: boolean): string {
  const section = spot.in === null ? undefined : findSection(ride, spot.in)
  const holder = spot.in === null || section ? undefined : findIn(ride, spot.in)
  const name = section ? nameOfSection(ride, section) : holder && nameOfItem(holder)
  const list = name !== undefined && isElsewhere ? ` in ${name}` : ''
  if (spot.after === null) return `first${list}`
  const before = spot.in === null ? findSection(ride, spot.after) : undefined
  const item = findIn(ride, spot.after)
  const neighbour = before ? nameOfSection(ride, before) : item && nameOfItem(item)
  return `after ${neighbour ?? 'another'}${list}`
}
