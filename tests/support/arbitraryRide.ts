import fc from 'fast-check'
import {
  type Block,
  CUE_MOMENTS,
  CURRENT_SCHEMA,
  type Cue,
  HANDS,
  type Item,
  POSTURES,
  type Resistance,
  type Ride,
  type Section,
  TERRAINS,
} from '#plan/model.ts'

/** How large a random ride may grow. */
export interface RideSize {
  sections?: number
  items?: number
  parts?: number
}

/**
 * Random rides that `parseRide` takes as they are: sections with and without songs and
 * beat grids, sets, ramps, every kind of call, one or two leaders, any text. All are spoken in English.
 */
export function arbitraryRide({ sections = 4, items = 5, parts = 3 }: RideSize = {}): fc.Arbitrary<Ride> {
  const content = fc.record(
    {
      schema: fc.constant(CURRENT_SCHEMA),
      id,
      title: words,
      aim: words,
      level: fc.constantFrom('beginner' as const, 'mixed' as const, 'advanced' as const),
      slotMinutes: fc.constantFrom(20, 30, 45, 60, 52.5),
      startsAt: fc.constantFrom('00:00', '06:30', '18:05', '23:59'),
      briefingSeconds: seconds(0, 600),
      clearUpSeconds: seconds(0, 600),
      datum: fc.constantFrom('base' as const, 'loose' as const),
      bike: arbitraryBike,
      room: fc.constantFrom('studio' as const, 'online' as const),
      location: words,
      leaders: fc.array(fc.record({ id, name: words, wordsPerMinute: fc.integer({ min: 90, max: 200 }) }), { minLength: 1, maxLength: 2 }),
      sections: fc.array(arbitrarySection(items, parts), { maxLength: sections }),
      houseRules: fc.dictionary(fc.stringMatching(/^[a-z][A-Za-z]{0,20}$/), exact(-1e6, 1e6), { maxKeys: 4 }).map(withoutInherited),
      avoidMoves: fc.array(someWords, { maxLength: 3 }),
      standIn: fc.record({ room: words, regulars: words, mustDo: words, mustNot: words }, { requiredKeys: [] }),
      parent: fc.record({ rideId: id, revision: words }),
      ancestors: fc.array(fc.stringMatching(/^[0-9a-f]{16}$/), { maxLength: 8 }),
      riders: fc.array(arbitraryRider, { maxLength: 2 }),
      setAside: fc.array(someWords, { maxLength: 3 }),
      shaky: fc.array(id, { maxLength: 3 }),
      privateNotes: words,
    },
    {
      requiredKeys: [
        ...(['schema', 'id', 'title', 'level', 'slotMinutes', 'briefingSeconds', 'clearUpSeconds', 'datum'] as const),
        ...(['bike', 'leaders', 'sections'] as const),
      ],
    },
  )
  return fc.tuple(content, idStyle).map(([ride, style]) => structuredClone(named(ride as Ride, style)))
}

const withoutInherited = (rules: Record<string, number>) => Object.fromEntries(Object.entries(rules).filter(([key]) => !(key in {})))

/** Numbers as people enter them, and as arithmetic leaves them. */
const exact = (min: number, max: number) =>
  fc
    .oneof(
      fc.integer({ min: Math.ceil(min), max: Math.floor(max) }),
      fc.integer({ min: Math.ceil(min * 4), max: Math.floor(max * 4) }).map((quarters) => quarters / 4),
      fc.integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) }).map((hundredths) => hundredths / 100),
      fc.double({ min, max, noNaN: true }),
    )
    .map((value) => (value === 0 ? 0 : value))

const seconds = (min: number, max: number) => exact(min, max)
const whole = (min: number, max: number) => fc.integer({ min, max })

const TRADE = [
  'seated climb',
  'standing run',
  'recover',
  'Quarter turn on.',
  'Sit. One turn off.',
  'Up in four',
  'jumps on 8',
  'heavy but smooth',
]
const words = fc.oneof(fc.constantFrom(...TRADE), fc.string({ unit: 'grapheme', maxLength: 12 }), fc.string({ maxLength: 30 }))
const someWords = words.filter((text) => text !== '')

/** Replaced by ids that are unique in their ride. */
const id = fc.constant('x')
/** Ids by place, by running number, or as a random maker leaves them. */
const idStyle = fc.constantFrom('place', 'number', 'random')

const foot = fc.constantFrom('left' as const, 'right' as const)
const strikes = fc.constantFrom(0.5 as const, 1 as const, 2 as const, null)

const rising = (low: number, high: number) =>
  fc.tuple(whole(low, high), whole(low, high)).map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) }))

const open = (low: number, high: number) => whole(low, high).map((from) => ({ from, to: from, orMore: true as const }))
const range = fc.oneof({ weight: 3, arbitrary: rising(0, 20) }, { weight: 1, arbitrary: open(0, 20) })
const checkpoint = fc.oneof({ weight: 3, arbitrary: rising(0, 24) }, { weight: 1, arbitrary: open(0, 24) })
const checked = <Call extends Resistance>(call: fc.Arbitrary<Call>) =>
  fc.oneof(
    { weight: 2, arbitrary: call },
    { weight: 1, arbitrary: fc.tuple(call, checkpoint).map(([one, at]) => ({ ...one, checkpoint: at })) },
  )

export const arbitraryResistance: fc.Arbitrary<Resistance> = fc.oneof(
  checked(fc.constant({ kind: 'keep' as const })),
  fc.record(
    {
      kind: fc.constant('change' as const),
      mode: fc.constantFrom('exact' as const, 'atLeast' as const, 'ifYouHaveIt' as const),
      steps: whole(-8, 8),
      checkpoint,
    },
    { requiredKeys: ['kind', 'mode', 'steps'] },
  ),
  checked(range.map((at) => ({ kind: 'total' as const, ...at }))),
  checked(rising(0, 20).chain(({ from, to }) => whole(from, to).map((aim) => ({ kind: 'total' as const, from, to, aim })))),
  checked(whole(0, 20).map((total) => ({ kind: 'total' as const, from: total, to: total }))),
  range.map((at) => ({ kind: 'byFeel' as const, ...at })),
  fc.constant({ kind: 'allOff' as const }),
)

const arbitraryCue: fc.Arbitrary<Cue> = fc.record(
  {
    id,
    moment: fc.constantFrom(...CUE_MOMENTS),
    lead: fc.oneof(fc.record({ counts: whole(0, 64) }), fc.record({ seconds: seconds(0, 30) })),
    text: words,
    count: fc.constantFrom(4 as const, 8 as const),
  },
  { requiredKeys: ['id', 'moment', 'lead', 'text'] },
)

const effort = fc.oneof(
  whole(0, 10).map((level) => ({ from: level, to: level })),
  fc.record({ from: exact(0, 10), to: exact(0, 10) }),
)
const cadence = fc.oneof(
  fc.constant('legsStill' as const),
  fc.record({ rpm: exact(40, 120), rampTo: exact(40, 120) }, { requiredKeys: ['rpm'] }),
)
const move = fc.record(
  {
    name: fc.oneof(fc.constantFrom('jump', 'travel-back', 'press', 'side lean'), someWords),
    counts: fc.constantFrom(2, 3, 4, 8, 16),
    side: foot,
    // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
    then: fc.constant('alternate' as const),
  },
  { requiredKeys: ['name', 'counts'] },
)
const option = fc.record({ text: someWords })
const eights = rising(1, 64)

/** A block measured in counts or in seconds; `leader` and `mic` are list positions until the ride names its leaders. */
export function arbitraryBlock(counted: boolean): fc.Arbitrary<Block> {
  const block = fc.record(
    {
      id,
      label: words,
      terrain: fc.constantFrom(...TERRAINS),
      length: counted
        ? fc
            .oneof(
              whole(1, 16).map((count) => count * 8),
              whole(1, 200),
            )
            .map((counts) => ({ counts }))
        : fc.oneof(whole(5, 120), exact(0.5, 600)).map((length) => ({ seconds: length })),
      posture: fc.constantFrom(...POSTURES),
      hands: fc.constantFrom(...HANDS),
      resistance: arbitraryResistance,
      ownTotal: whole(0, 24),
      cadence,
      strikesPerBeat: strikes,
      effort,
      lead: fc.constantFrom('keep' as const, 'swap' as const, 'left' as const, 'right' as const),
      move,
      allOut: fc.boolean(),
      water: fc.boolean(),
      walk: fc.boolean(),
      easier: option,
      harder: option,
      feel: words,
      cues: fc.array(arbitraryCue, { maxLength: 3 }),
      leader: fc.constantFrom('0', '1'),
      mic: fc.constantFrom('0', '1'),
      locked: fc.boolean(),
      notes: words,
    },
    { requiredKeys: ['id', 'terrain', 'length', 'posture', 'hands', 'resistance', 'effort', 'cues'] },
  )
  return fc
    .tuple(block, fc.option(eights, { nil: undefined }))
    .map(([made, bounds]) => (bounds ? { ...made, minEights: bounds.from, maxEights: bounds.to } : made))
}

const arbitraryItem = (counted: boolean, parts: number): fc.Arbitrary<Item> =>
  fc.oneof(
    { weight: 4, arbitrary: arbitraryBlock(counted) },
    {
      weight: 1,
      arbitrary: fc.record(
        {
          id,
          label: words,
          rounds: whole(1, 6),
          parts: fc.array(arbitraryBlock(counted), { minLength: 1, maxLength: parts }),
          perRound: fc.record({ steps: whole(-2, 2) }),
        },
        { requiredKeys: ['id', 'rounds', 'parts'] },
      ),
    },
  )

/** Beat grids of two to four anchors at 40 to 210 beats a minute. */
export const arbitraryGrid = fc
  .record({
    first: fc.tuple(whole(-4, 8), seconds(0, 5)),
    stretches: fc.array(fc.record({ counts: whole(8, 600), bpm: exact(40, 210) }), { minLength: 1, maxLength: 3 }),
    beatsPerBar: fc.constantFrom(3 as const, 4 as const, 6 as const),
  })
  .map(({ first, stretches, beatsPerBar }) => {
    const anchors: [number, number][] = [first]
    for (const { counts, bpm } of stretches) {
      const [count, second] = anchors.at(-1)!
      anchors.push([count + counts, second + (counts * 60) / bpm])
    }
    return { anchors, beatsPerBar }
  })

const arbitrarySong = (counted: boolean) =>
  fc.record(
    {
      id,
      title: words,
      artist: words,
      ...(counted ? { grid: arbitraryGrid } : {}),
      lengthSeconds: seconds(30, 600),
      strikesPerBeat: strikes,
      marks: fc.array(fc.record({ count: whole(0, 900), label: words }), { maxLength: 2 }),
      quiet: fc.array(
        rising(0, 900).map(({ from, to }) => ({ from, to: to + 1 })),
        { maxLength: 2 },
      ),
      clean: fc.boolean(),
      fingerprint: someWords,
    },
    {
      requiredKeys: counted
        ? ['id', 'title', 'grid', 'lengthSeconds', 'strikesPerBeat']
        : ['id', 'title', 'lengthSeconds', 'strikesPerBeat'],
    },
  )

export const arbitrarySection = (items: number, parts: number): fc.Arbitrary<Section> =>
  fc.constantFrom<'grid' | 'song' | 'none' | 'absent'>('grid', 'grid', 'song', 'none', 'absent').chain((music) => {
    const counted = music === 'grid'
    const song = { grid: arbitrarySong(true), song: arbitrarySong(false), none: fc.constant(null), absent: fc.constant(undefined) }[music]
    const content = fc.record(
      {
        id,
        title: words,
        song,
        leadInSeconds: seconds(-8, 20),
        lead: foot,
        blocks: fc.array(arbitraryItem(counted, parts), { maxLength: items }),
        notes: words,
      },
      { requiredKeys: ['id', 'song', 'leadInSeconds', 'blocks'] },
    )
    return fc.tuple(content, fc.option(fc.tuple(whole(0, 64), whole(1, 900)), { nil: undefined })).map(([section, points]) => {
      const { song: held, ...rest } = section
      const made = { ...rest, ...(held === undefined ? {} : { song: held }) } as Section
      return points ? { ...made, inCount: points[0], outCount: points[0] + points[1] } : made
    })
  })

export const arbitraryBike = fc
  .record({
    stepsPerUnit: fc.constantFrom(1, 2, 4, 10),
    min: fc.option(whole(0, 4), { nil: undefined }),
    base: whole(4, 12),
    max: whole(13, 96),
    brake: fc.constantFrom('friction' as const, 'magnetic' as const),
    rises: fc.array(fc.tuple(exact(0.25, 4), exact(0, 90)), { minLength: 1, maxLength: 8 }),
    name: words,
    feelAnchors: fc.option(fc.array(fc.record({ feel: someWords, setting: exact(0, 20) }), { maxLength: 3 }), { nil: undefined }),
  })
  .map(({ stepsPerUnit, min, base, max, brake, rises, name, feelAnchors }) => {
    const points: [number, number][] = [[0, 5]]
    for (const [settingRise, wattsRise] of rises) {
      const [setting, watts] = points.at(-1)!
      points.push([setting + settingRise, watts + wattsRise])
    }
    return {
      id: 'x',
      name,
      unit: 'turn',
      stepsPerUnit,
      ...(min === undefined ? {} : { min: min / stepsPerUnit }),
      max: max / stepsPerUnit,
      base: base / stepsPerUnit,
      brake,
      referenceRpm: 80,
      points,
      ...(feelAnchors ? { feelAnchors } : {}),
    }
  })

const arbitraryRider = fc.record(
  {
    id,
    name: words,
    massKg: exact(45, 110),
    age: whole(18, 75),
    vo2max: exact(20, 65),
    criticalPower: exact(80, 300),
    wPrime: whole(6_000, 25_000),
    restingHr: whole(40, 90),
    maxHr: whole(150, 210),
    baseOffset: fc.constantFrom(-0.5, 0, 0.5),
  },
  { requiredKeys: ['id', 'name', 'massKg', 'age', 'vo2max', 'criticalPower', 'wPrime', 'restingHr', 'baseOffset'] },
)

/** The same ride with an id of its own for everything, and leaders named where blocks point at one. */
function named(ride: Ride, style: string): Ride {
  let made = 0
  const name = (place: string) => {
    made += 1
    if (style === 'place') return place
    return style === 'number' ? `k${made}` : (made * 2_654_435_761).toString(36)
  }
  const leaders = ride.leaders.map((leader, l) => ({ ...leader, id: name(`l${l + 1}`) }))
  const leaderAt = (position: string | undefined) => leaders[Number(position) % leaders.length]?.id
  const nameBlock = (block: Block, place: string): Block => ({
    ...block,
    id: name(place),
    cues: block.cues.map((cue, c) => ({ ...cue, id: name(`${place}c${c + 1}`) })),
    ...(block.leader === undefined ? {} : { leader: leaderAt(block.leader) }),
    ...(block.mic === undefined ? {} : { mic: leaderAt(block.mic) }),
  })
  const nameItem = (item: Item, place: string): Item =>
    'parts' in item
      ? { ...item, id: name(place), parts: item.parts.map((part, p) => nameBlock(part, `${place}p${p + 1}`)) }
      : nameBlock(item, place)
  const renamed = {
    ...ride,
    id: name('ride'),
    bike: { ...ride.bike, id: name('bike') },
    leaders,
    sections: ride.sections.map((section, s) => {
      const song = section.song ? { song: { ...section.song, id: name(`s${s + 1}m`) } } : {}
      return { ...section, ...song, id: name(`s${s + 1}`), blocks: section.blocks.map((item, b) => nameItem(item, `s${s + 1}b${b + 1}`)) }
    }),
    ...(ride.riders ? { riders: ride.riders.map((rider, r) => ({ ...rider, id: name(`r${r + 1}`) })) } : {}),
    ...(ride.parent ? { parent: { ...ride.parent, rideId: name('parent') } } : {}),
  }
  return ride.shaky ? { ...renamed, shaky: marked(renamed) } : renamed
}

/** As many marks as before, on the first blocks there are. */
function marked({ shaky, sections }: Ride): string[] {
  const blocks = sections.flatMap((section) => section.blocks.flatMap((item) => ('parts' in item ? item.parts : [item])))
  return blocks.slice(0, shaky?.length).map(({ id }) => id)
}
