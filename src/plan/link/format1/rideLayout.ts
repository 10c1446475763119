import type { oldestVersion } from '#plan/document/oldestVersion.ts'
import type { UNSHARED } from '#plan/link/shareable.ts'
import type { Bike, BrakeFit, HouseRules, Item, Leader, Ride, Section, Song, StandIn } from '#plan/model.ts'
import type { Language } from '#words/language.ts'
import { itemLayout } from './blockLayout.ts'
import { type Kit, layoutKit } from './kit.ts'
import { revisionShape } from './revisionShape.ts'
import { group, mapped, oneOf, pair, type Shape } from './shapes.ts'
import { songLayout } from './songLayout.ts'

/**
 * Where every value of a shared ride lies in the columns of link format 1. The order of the
 * columns, of the fields and of every list of choices is the format: once the page has been
 * published, none of it may change, and what the model gains goes into a format of its own.
 */
const kit = layoutKit()

/** A section with its out-point as what it is beyond the end of its blocks: most often nothing. */
type Packed = Omit<Section, 'outCount'> & { out: { beyond: number } | undefined }

const countsOf = (item: Item): number => {
  if ('parts' in item) return item.rounds * item.parts.reduce((sum, part) => sum + countsOf(part), 0)
  return 'counts' in item.length ? item.length.counts : 0
}
const endOf = ({ inCount = 0, blocks }: Pick<Section, 'inCount' | 'blocks'>) => blocks.reduce((sum, item) => sum + countsOf(item), inCount)

/** The shape of a value that stands at a place of its own. */
const at = <T>(mark: string, shape: Shape<T>): Shape<T> => ({
  write: (value, to, place) => shape.write(value, to, place + mark),
  read: (from, place) => shape.read(from, place + mark),
})

const songOrNone = (kit: Kit): Shape<Song | null> =>
  kit.either((value): value is Song => value !== null, at('m', songLayout(kit)), oneOf<null>()(kit.column(), [null]))

const sectionLayout = (kit: Kit): Shape<Section> =>
  mapped(
    group<Packed>({
      id: kit.id,
      title: kit.maybe(kit.name()),
      song: kit.maybe(songOrNone(kit)),
      inCount: kit.maybe(kit.whole()),
      leadInSeconds: kit.anyNumber(),
      lead: kit.maybe(kit.foot()),
      blocks: kit.several('b', itemLayout(kit)),
      notes: kit.maybe(kit.words()),
      out: kit.maybe(group<{ beyond: number }>({ beyond: kit.signedWhole() })),
    }),
    ({ outCount, ...rest }) => ({ ...rest, out: outCount === undefined ? undefined : { beyond: outCount - endOf(rest) } }),
    ({ out, ...rest }) => (out ? { ...rest, outCount: endOf(rest) + out.beyond } : rest),
  )

/** Whether a bike has feel anchors, and what more is known of it: one number of four bits, the first of which was there alone. */
interface Known {
  feelAnchors: Bike['feelAnchors']
  calibration: Bike['calibration']
  isFitted: boolean
}

const ANCHORED = 1
const FITTED = 2
const BY = { watts: 4, feel: 8 } as const

function knownLayout(kit: Kit): Shape<Known> {
  const anchors = kit.several('', group<{ feel: string; setting: number }>({ feel: kit.smallWords(), setting: kit.anyNumber() }))
  const form = kit.column()
  return {
    write({ feelAnchors, calibration, isFitted }, to, place) {
      to.put(form, (feelAnchors ? ANCHORED : 0) + (isFitted ? FITTED : 0) + (calibration ? BY[calibration] : 0))
      if (feelAnchors) anchors.write(feelAnchors, to, place)
    },
    read(from, place) {
      const read = from.take(form)
      return {
        feelAnchors: read & ANCHORED ? anchors.read(from, place) : undefined,
        calibration: read & BY.watts ? 'watts' : read & BY.feel ? 'feel' : undefined,
        isFitted: (read & FITTED) !== 0,
      }
    },
  }
}

/**
 * A common bike costs no more than its name. How its brake was fitted stands behind its reference
 * cadence, in columns that hold no other: a page from before brakes were fitted leaves it there.
 */
const bikeLayout = (kit: Kit): Shape<Bike> => {
  const { usual } = kit
  const fields = {
    id: at('knob', kit.id),
    name: kit.name(),
    unit: usual('turn', kit.smallWords()),
    stepsPerUnit: usual(4, kit.whole()),
    min: kit.maybe(kit.anyNumber()),
    max: usual(20, kit.anyNumber()),
    base: usual(2, kit.anyNumber()),
    brake: oneOf<Bike['brake']>()(kit.column(), ['friction', 'magnetic']),
  }
  const rpm = kit.anyNumber()
  const bike = group<Omit<Bike, keyof Known | 'brakeFit'> & { known: Known }>({
    ...fields,
    referenceRpm: usual(80, rpm),
    points: usual(USUAL_POINTS, kit.several('', pair(kit.anyNumber(), kit.anyNumber()))),
    known: knownLayout(kit),
  })
  const fit = group<BrakeFit>({ exponent: rpm, error: rpm })
  return {
    write({ brakeFit, feelAnchors, calibration, ...rest }, to, place) {
      bike.write({ ...rest, known: { feelAnchors, calibration, isFitted: brakeFit !== undefined } }, to, place)
      if (brakeFit) fit.write(brakeFit, to, place)
    },
    read(from, place) {
      const {
        known: { feelAnchors, calibration, isFitted },
        ...rest
      } = bike.read(from, place)
      return {
        ...rest,
        ...(isFitted && { brakeFit: fit.read(from, place) }),
        ...(feelAnchors && { feelAnchors }),
        ...(calibration && { calibration }),
      }
    },
  }
}

/** Watts of a knob by turns, as a new ride's bike has them; common practice. */
const USUAL_POINTS: Bike['points'] = [
  [0, 8],
  [1, 22],
  [2, 50],
  [3, 110],
  [4, 170],
  [5, 230],
  [6, 290],
]

const houseRulesLayout = (kit: Kit): Shape<HouseRules> =>
  mapped(
    kit.several('', pair(kit.smallWords(), kit.anyNumber())),
    (rules) => Object.entries(rules).toSorted(([a], [b]) => (a < b ? -1 : 1)),
    (entries) => Object.fromEntries(entries),
  )

const standInLayout = (kit: Kit): Shape<StandIn> =>
  group<StandIn>({
    room: kit.maybe(kit.words()),
    regulars: kit.maybe(kit.words()),
    mustDo: kit.maybe(kit.words()),
    mustNot: kit.maybe(kit.words()),
  })

/** "18:30" as the minute of the day. */
const minuteOf = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3))
const clockOf = (minute: number) => [Math.floor(minute / 60), minute % 60].map((part) => String(part).padStart(2, '0')).join(':')

/** Everything of a ride that `shareable` leaves in it; what the model gains does not compile without a place here. */
type Shared = Omit<Ride, (typeof UNSHARED)[number]>

type Version = ReturnType<typeof oldestVersion>
/** A shared ride as the version it is read as. */
type Written = Omit<Shared, 'schema'> & { schema: Version }

/**
 * The room, whether a location follows, and the language: one number, whose first bit was there alone before there were
 * locations, and whose second before there were languages. What stands above a bit that a page knows, it does not read.
 */
interface Whereabouts {
  room: Ride['room']
  isLocated: boolean
  language: Ride['language']
}

const ROOM = 1
const LOCATED = 2
const LANGUAGE = 4
/** Times {@link LANGUAGE}; 0 where none is given. */
const SPOKEN: Readonly<Record<Language, number>> = { en: 1, de: 2 }

/** A number of a newer page is passed on for the schema to refuse, by a sentence that says what it is about. */
const languageOf = (spoken: number): Language | undefined =>
  spoken === 0 ? undefined : ((Object.keys(SPOKEN) as Language[]).find((code) => SPOKEN[code] === spoken) ?? (String(spoken) as Language))

function whereaboutsLayout(kit: Kit): Shape<Whereabouts> {
  const room = oneOf<NonNullable<Ride['room']>>()(kit.column(), ['studio', 'online'])
  const form = kit.column()
  return {
    write({ room: kind, isLocated, language }, to, place) {
      to.put(form, (kind === undefined ? 0 : ROOM) + (isLocated ? LOCATED : 0) + (language ? LANGUAGE * SPOKEN[language] : 0))
      if (kind !== undefined) room.write(kind, to, place)
    },
    read(from, place) {
      const read = from.take(form)
      return {
        room: read & ROOM ? room.read(from, place) : undefined,
        isLocated: (read & LOCATED) !== 0,
        language: languageOf(Math.floor(read / LANGUAGE)),
      }
    },
  }
}

/** The version a document is read as: the oldest one it can be, so that what needs no newer one opens with any page, by the very same link. */
const schema = oneOf<Version>()(kit.column(), [1, 2])
const name = kit.name()

const located = group<Omit<Shared, 'schema' | 'room' | 'location' | 'language'> & { schema: Version; room: Whereabouts }>({
  schema,
  id: kit.id,
  title: name,
  aim: kit.maybe(kit.words()),
  level: oneOf<Ride['level']>()(kit.column(), ['mixed', 'beginner', 'advanced']),
  slotMinutes: kit.usual(45, kit.anyNumber()),
  startsAt: kit.maybe(mapped(kit.whole(), minuteOf, clockOf)),
  briefingSeconds: kit.anyNumber(),
  clearUpSeconds: kit.anyNumber(),
  datum: oneOf<Ride['datum']>()(kit.column(), ['base', 'loose']),
  bike: bikeLayout(kit),
  room: whereaboutsLayout(kit),
  leaders: kit.several('l', group<Leader>({ id: kit.id, name: kit.name(), wordsPerMinute: kit.usual(140, kit.anyNumber()) })),
  sections: kit.several('s', sectionLayout(kit)),
  houseRules: kit.maybe(houseRulesLayout(kit)),
  avoidMoves: kit.maybe(kit.several('', kit.smallWords())),
  standIn: kit.maybe(standInLayout(kit)),
  parent: kit.maybe(group<NonNullable<Ride['parent']>>({ rideId: kit.id, revision: kit.smallWords() })),
  ancestors: kit.maybe(kit.several('', revisionShape(kit.column()))),
})

/**
 * A location is written after all else, as one more name in the columns of the title: a page from
 * before there were locations finds everything it knows in its place, and more names than it asks for.
 */
export const rideLayout: Shape<Written> = {
  write({ room, location, language, ...rest }, to, place) {
    located.write({ ...rest, room: { room, isLocated: location !== undefined, language } }, to, place)
    if (location !== undefined) name.write(location, to, place)
  },
  read(from, place) {
    const {
      room: { room, isLocated, language },
      ...rest
    } = located.read(from, place)
    return {
      ...rest,
      ...(room !== undefined && { room }),
      ...(language !== undefined && { language }),
      ...(isLocated && { location: name.read(from, place) }),
    }
  },
}

/** How many columns the layout has. */
export const COLUMN_COUNT = kit.columnCount()
