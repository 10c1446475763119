import type {
  BeatGrid,
  Bike,
  Block,
  Cadence,
  Cue,
  Foot,
  HouseRules,
  Item,
  Leader,
  Length,
  Move,
  Option,
  Resistance,
  Ride,
  Section,
  SetBlock,
  Song,
} from '#plan/model.ts'
import { idShape } from './idShape.ts'
import { count, eights, group, list, mapped, number, oneOf, optional, pair, type Shape, signed, text, usually, yesOrNo } from './shapes.ts'

/**
 * Where every value of a shared ride lies in the columns of link format 1. The order of
 * the columns, of the fields and of every list of choices is the format: none of it may
 * change. What the model gains later goes into a format of its own.
 */

let made = 0
const column = () => made++

const id = idShape(column(), column(), column())
/** The shape of a value that stands at a place of its own. */
const at = <T>(mark: string, shape: Shape<T>): Shape<T> => ({
  write: (value, to, place) => shape.write(value, to, place + mark),
  read: (from, place) => shape.read(from, place + mark),
})
const words = () => text(column(), 'sentences')
const smallWords = () => text(column(), 'small')
const names = () => text(column(), 'names')
const anyNumber = () => number(column(), column())
const whole = () => count(column())
const signedWhole = () => signed(column())
const maybe = <T>(shape: Shape<T>) => optional(column(), shape)
const countsInEights = () => eights(column(), column())
const foot = () => oneOf<Foot>()(column(), ['left', 'right'])
const strikes = () => oneOf<0.5 | 1 | 2 | null>()(column(), [1, 2, 0.5, null])

interface Range {
  from: number
  to: number
}

/** From here to there, the second written only where it differs. */
const range = (from: Shape<number>, to: Shape<number | undefined>): Shape<Range> =>
  mapped(
    group<{ from: number; to: number | undefined }>({ from, to }),
    (value) => ({ from: value.from, to: value.to === value.from ? undefined : value.to }),
    (written) => ({ from: written.from, to: written.to ?? written.from }),
  )
const stepRange = () => range(signedWhole(), maybe(signedWhole()))

/** One of two shapes, by a property that tells them apart. */
const either = <A, B>(isFirst: (value: A | B) => value is A, first: Shape<A>, second: Shape<B>): Shape<A | B> => {
  const which = column()
  return {
    write(value, to, place) {
      const goesFirst = isFirst(value)
      to.put(which, goesFirst ? 0 : 1)
      if (goesFirst) first.write(value, to, place)
      else second.write(value as B, to, place)
    },
    read: (from, place) => (from.take(which) === 0 ? first : second).read(from, place),
  }
}

const counted = (counts: Shape<number>) => group<{ counts: number }>({ counts })
const timed = () => group<{ seconds: number }>({ seconds: anyNumber() })
const isCounted = (value: Length): value is { counts: number } => 'counts' in value

const cue = group<Cue>({
  id,
  moment: oneOf<Cue['moment']>()(column(), ['announce', 'preview', 'countIn', 'action', 'form', 'story']),
  lead: either(isCounted, counted(whole()), timed()),
  text: words(),
  count: maybe(oneOf<4 | 8>()(column(), [4, 8])),
})

type Kinds<Kind extends Resistance['kind']> = Extract<Resistance, { kind: Kind }>

/** A call as its kind and what that kind has. */
const resistance: Shape<Resistance> = (() => {
  const kinds = ['total', 'change', 'keep', 'byFeel', 'allOff'] as const
  const kind = oneOf<Resistance['kind']>()(column(), kinds)
  const totals = group<{ range: Range; aim?: number }>({ range: stepRange(), aim: maybe(signedWhole()) })
  const changes = group<Omit<Kinds<'change'>, 'kind'>>({
    mode: oneOf<Kinds<'change'>['mode']>()(column(), ['exact', 'atLeast', 'ifYouHaveIt']),
    steps: signedWhole(),
    checkpoint: maybe(stepRange()),
  })
  const feels = stepRange()
  return {
    write(value, to, place) {
      kind.write(value.kind, to, place)
      if (value.kind === 'total') totals.write({ range: value, aim: value.aim }, to, place)
      if (value.kind === 'change') changes.write(value, to, place)
      if (value.kind === 'byFeel') feels.write(value, to, place)
    },
    read(from, place) {
      const read = kind.read(from, place)
      if (read === 'change') return { kind: read, ...changes.read(from, place) }
      if (read === 'byFeel') return { kind: read, ...feels.read(from, place) }
      if (read !== 'total') return { kind: read }
      const { range, ...aim } = totals.read(from, place)
      return { kind: read, ...range, ...aim }
    },
  }
})()

const cadence: Shape<Cadence> = either(
  (value): value is 'legsStill' => value === 'legsStill',
  oneOf<'legsStill'>()(column(), ['legsStill']),
  group<{ rpm: number; rampTo?: number }>({ rpm: anyNumber(), rampTo: maybe(anyNumber()) }),
)

const option = () => group<Option>({ text: smallWords() })

const block = group<Block>({
  id,
  label: maybe(smallWords()),
  terrain: oneOf<Block['terrain']>()(column(), [
    'flat',
    'tempo',
    'hill',
    'run',
    'jumps',
    'surge',
    'push',
    'recover',
    'flush',
    'stretch',
    'hold',
  ]),
  length: either(isCounted, counted(countsInEights()), timed()),
  posture: oneOf<Block['posture']>()(column(), ['seated', 'standing', 'hovering', 'offBike']),
  hands: oneOf<Block['hands']>()(column(), ['centre', 'wide', 'ends']),
  resistance,
  cadence: maybe(cadence),
  strikesPerBeat: maybe(strikes()),
  effort: range(anyNumber(), maybe(anyNumber())),
  lead: maybe(oneOf<NonNullable<Block['lead']>>()(column(), ['swap', 'keep', 'left', 'right'])),
  move: maybe(
    group<Move>({
      name: smallWords(),
      counts: whole(),
      side: maybe(foot()),
      // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
      then: maybe(oneOf<'alternate'>()(column(), ['alternate'])),
    }),
  ),
  allOut: maybe(yesOrNo(column())),
  water: maybe(yesOrNo(column())),
  walk: maybe(yesOrNo(column())),
  easier: maybe(option()),
  harder: maybe(option()),
  feel: maybe(smallWords()),
  cues: list(column(), 'c', cue),
  leader: maybe(smallWords()),
  mic: maybe(smallWords()),
  locked: maybe(yesOrNo(column())),
  minEights: maybe(whole()),
  maxEights: maybe(whole()),
  notes: maybe(words()),
})

const set = group<SetBlock>({
  id,
  label: maybe(smallWords()),
  rounds: whole(),
  parts: list(column(), 'p', block),
  perRound: maybe(group<{ steps: number }>({ steps: signedWhole() })),
})

/** A grid of one tempo as people enter it: whole beats from 0 in 1, 10, 100 or 1,000 minutes; beats undefined for any other grid. */
const MINUTES = [1, 10, 100, 1000] as const
interface Steady {
  minutes: (typeof MINUTES)[number]
  beats: number
  firstBeat: number
}

function steadyOf(anchors: BeatGrid['anchors']): Steady | undefined {
  const [first, last, more] = anchors
  if (!first || !last || more || first[0] !== 0) return undefined
  const minutes = MINUTES.find((long) => first[1] + 60 * long === last[1])
  return minutes && { minutes, beats: last[0], firstBeat: first[1] }
}

const anchors = mapped(
  either(
    (value: Steady | BeatGrid['anchors']): value is Steady => 'beats' in value,
    group<Steady>({ minutes: oneOf<Steady['minutes']>()(column(), MINUTES), beats: whole(), firstBeat: anyNumber() }),
    list(column(), '', pair(signedWhole(), anyNumber())),
  ),
  (value: BeatGrid['anchors']) => steadyOf(value) ?? value,
  (written) => ('beats' in written ? anchorsOf(written) : written),
)

const anchorsOf = ({ minutes, beats, firstBeat }: Steady): BeatGrid['anchors'] => [
  [0, firstBeat],
  [beats, firstBeat + 60 * minutes],
]

const song = group<Song>({
  id,
  title: names(),
  artist: maybe(names()),
  grid: maybe(group<BeatGrid>({ anchors, beatsPerBar: oneOf<BeatGrid['beatsPerBar']>()(column(), [4, 3, 6]) })),
  lengthSeconds: anyNumber(),
  strikesPerBeat: strikes(),
  marks: maybe(list(column(), '', group<{ count: number; label: string }>({ count: whole(), label: smallWords() }))),
  quiet: maybe(list(column(), '', group<{ from: number; to: number }>({ from: whole(), to: whole() }))),
  clean: maybe(yesOrNo(column())),
  fingerprint: maybe(smallWords()),
})

/** A section with its out-point as what it is beyond the end of its blocks: most often nothing. */
type Packed = Omit<Section, 'outCount'> & { out: { beyond: number } | undefined }

const countsOf = (item: Item): number => {
  if ('parts' in item) return item.rounds * item.parts.reduce((sum, part) => sum + countsOf(part), 0)
  return 'counts' in item.length ? item.length.counts : 0
}
const endOf = ({ inCount = 0, blocks }: Pick<Section, 'inCount' | 'blocks'>) => blocks.reduce((sum, item) => sum + countsOf(item), inCount)

const section = mapped(
  group<Packed>({
    id,
    title: maybe(names()),
    song: maybe(either((value: Song | null): value is Song => value !== null, at('m', song), oneOf<null>()(column(), [null]))),
    inCount: maybe(whole()),
    leadInSeconds: anyNumber(),
    lead: maybe(foot()),
    blocks: list(
      column(),
      'b',
      either((item: Item): item is Block => !('parts' in item), block, set),
    ),
    notes: maybe(words()),
    out: maybe(group<{ beyond: number }>({ beyond: signedWhole() })),
  }),
  ({ outCount, ...rest }: Section): Packed => ({ ...rest, out: outCount === undefined ? undefined : { beyond: outCount - endOf(rest) } }),
  ({ out, ...rest }): Section => (out ? { ...rest, outCount: endOf(rest) + out.beyond } : rest),
)

/** A common bike costs no more than its name. */
const bike = group<Bike>({
  id: at('knob', id),
  name: names(),
  unit: usually(column(), 'turn', smallWords()),
  stepsPerUnit: usually(column(), 4, whole()),
  min: maybe(anyNumber()),
  max: usually(column(), 20, anyNumber()),
  base: usually(column(), 2, anyNumber()),
  brake: oneOf<Bike['brake']>()(column(), ['friction', 'magnetic']),
  referenceRpm: usually(column(), 80, anyNumber()),
  points: usually<Bike['points']>(
    column(),
    [
      [0, 8],
      [1, 22],
      [2, 50],
      [3, 110],
      [4, 170],
      [5, 230],
      [6, 290],
    ],
    list(column(), '', pair(anyNumber(), anyNumber())),
  ),
  feelAnchors: maybe(list(column(), '', group<{ feel: string; setting: number }>({ feel: smallWords(), setting: anyNumber() }))),
})

const houseRules: Shape<HouseRules> = mapped(
  list(column(), '', pair(smallWords(), anyNumber())),
  (rules) => Object.entries(rules).toSorted(([a], [b]) => (a < b ? -1 : 1)),
  (entries) => Object.fromEntries(entries),
)

/** Everything of a ride that `shareable` leaves in it. */
export const rideLayout = group<Omit<Ride, 'privateNotes' | 'riders'>>({
  schema: oneOf<Ride['schema']>()(column(), [1]),
  id,
  title: names(),
  aim: maybe(words()),
  level: oneOf<Ride['level']>()(column(), ['mixed', 'beginner', 'advanced']),
  slotMinutes: usually(column(), 45, anyNumber()),
  startsAt: maybe(smallWords()),
  briefingSeconds: anyNumber(),
  clearUpSeconds: anyNumber(),
  datum: oneOf<Ride['datum']>()(column(), ['base', 'loose']),
  bike,
  room: maybe(oneOf<NonNullable<Ride['room']>>()(column(), ['studio', 'online'])),
  leaders: list(column(), 'l', group<Leader>({ id, name: names(), wordsPerMinute: usually(column(), 140, anyNumber()) })),
  sections: list(column(), 's', section),
  houseRules: maybe(houseRules),
  parent: maybe(group<NonNullable<Ride['parent']>>({ rideId: id, revision: smallWords() })),
})

/** How many columns the layout has. */
export const COLUMN_COUNT = made
