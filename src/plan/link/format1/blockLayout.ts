import { checkpointOf } from '#plan/ledger/applyCall.ts'
import type { Block, Cadence, Change, Cue, Hands, Item, Length, Move, Option, Resistance, SetBlock } from '#plan/model.ts'
import { EIGHT, PHRASE, type StepRange } from '#units/units.ts'
import { type Memory, toFront } from './columns.ts'
import type { Kit, Range } from './kit.ts'
import { given, group, inUnits, latestOneOf, mapped, near, oneOf, type Shape } from './shapes.ts'

/** Like a block of the same terrain in the same posture. */
const alike = ({ terrain, posture }: Memory['scene']) => `${terrain} ${posture}`
/** Like a change between the same postures. */
const changedAlike = ({ posture, postureBefore }: Memory['scene']) => `${postureBefore} ${posture}`

/** The blocks and sets of a section. */
export function itemLayout(kit: Kit): Shape<Item> {
  const block = blockLayout(kit)
  const set = group<SetBlock>({
    id: kit.id,
    label: kit.maybe(kit.smallWords()),
    rounds: kit.whole(),
    parts: kit.several('p', block),
    perRound: kit.maybe(group<{ steps: number }>({ steps: kit.signedWhole() })),
  })
  return kit.either((item: Item): item is Block => !('parts' in item), block, set)
}

function blockLayout(kit: Kit): Shape<Block> {
  const { maybe, yes, smallWords } = kit
  const option = () => group<Option>({ text: smallWords() })
  return group<Block>({
    id: kit.id,
    terrain: noted(terrainLayout(kit), (scene, terrain) => {
      scene.terrain = terrain
    }),
    posture: noted(oneOf<Block['posture']>()(kit.column(), ['seated', 'standing', 'hovering', 'offBike']), (scene, posture) => {
      scene.postureBefore = scene.posture
      scene.posture = posture
    }),
    label: labelLayout(kit),
    hands: handsLayout(kit),
    length: lengthLayout(kit, inUnits(PHRASE, near(kit.column(), alike), inUnits(EIGHT, kit.whole(), kit.whole()))),
    resistance: resistanceLayout(kit),
    ownTotal: maybe(kit.signedWhole()),
    cadence: maybe(cadenceLayout(kit)),
    strikesPerBeat: maybe(kit.strikes()),
    effort: kit.range(nearNumber(kit), kit.anyNumber()),
    lead: maybe(oneOf<NonNullable<Block['lead']>>()(kit.column(), ['swap', 'keep', 'left', 'right'])),
    move: maybe(moveLayout(kit)),
    allOut: maybe(yes()),
    water: maybe(yes()),
    walk: maybe(yes()),
    easier: maybe(option()),
    harder: maybe(option()),
    feel: maybe(smallWords()),
    cues: kit.several('c', cueLayout(kit)),
    leader: maybe(smallWords()),
    mic: maybe(smallWords()),
    locked: maybe(yes()),
    minEights: maybe(kit.whole()),
    maxEights: maybe(kit.whole()),
    notes: maybe(kit.words()),
  })
}

/** A shape whose value is kept in mind for the guesses that follow. */
const noted = <T>(shape: Shape<T>, note: (scene: Memory['scene'], value: T) => void): Shape<T> => ({
  write(value, to, place) {
    shape.write(value, to, place)
    note(to.memory.scene, value)
  },
  read(from, place) {
    const value = shape.read(from, place)
    note(from.memory.scene, value)
    return value
  },
})

const terrainLayout = (kit: Kit) =>
  latestOneOf<Block['terrain']>()(kit.column(), [
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
  ])

/** What a label was found to be: the last one of a like block, one spelled out, none, or an older one of a like block. */
const LAST = 0
const OTHER = 1
const NONE = 2
const OLDER = 3

/** A label is most often the terrain's own word, or what a like block before was called. */
function labelLayout(kit: Kit): Shape<string | undefined> {
  const form = kit.column()
  const other = kit.smallWords()
  const knownOf = ({ labels, scene }: Memory) => {
    const known = labels.get(alike(scene)) ?? [scene.terrain]
    labels.set(alike(scene), known)
    return known
  }
  return {
    write(label, to, place) {
      const known = label === undefined ? -1 : knownOf(to.memory).indexOf(label)
      to.put(form, label === undefined ? NONE : known < 0 ? OTHER : known === 0 ? LAST : known - 1 + OLDER)
      if (label === undefined) return
      toFront(knownOf(to.memory), label)
      if (known < 0) other.write(label, to, place)
    },
    read(from, place) {
      const found = from.take(form)
      if (found === NONE) return undefined
      const known = knownOf(from.memory)
      const label = found === OTHER ? other.read(from, place) : given(known[found === LAST ? 0 : found - OLDER + 1])
      toFront(known, label)
      return label
    },
  }
}

const HANDS: readonly Hands[] = ['centre', 'wide', 'ends']
const handsLayout = (kit: Kit) =>
  mapped(
    near(kit.column(), alike),
    (value: Hands) => HANDS.indexOf(value),
    (place) => given(HANDS[place]),
  )

function nearNumber(kit: Kit): Shape<number> {
  const value = kit.column()
  return kit.anyNumber(value, near(value, alike))
}

const lengthLayout = (kit: Kit, counts: Shape<number>): Shape<Length> =>
  kit.either(
    (value: Length): value is { counts: number } => 'counts' in value,
    group<{ counts: number }>({ counts }),
    group<{ seconds: number }>({ seconds: kit.anyNumber() }),
  )

/** The kinds of calls that took no checkpoint when the format was made are kinds of their own where they have one. */
type WrittenKind = Resistance['kind'] | 'checkedKeep' | 'checkedTotal'

function kindOf(call: Resistance): WrittenKind {
  if (call.kind === 'keep' && call.checkpoint) return 'checkedKeep'
  return call.kind === 'total' && call.checkpoint ? 'checkedTotal' : call.kind
}

/** A call as its kind and what that kind has. */
function resistanceLayout(kit: Kit): Shape<Resistance> {
  const kind = oneOf<WrittenKind>()(kit.column(), ['total', 'change', 'keep', 'byFeel', 'allOff', 'checkedKeep', 'checkedTotal'])
  const steps = () => openRange(kit.range(kit.signedWhole(), kit.signedWhole()))
  const totals = openRange(kit.range(near(kit.column(), alike), kit.signedWhole()))
  const aim = group<{ aim?: number }>({ aim: kit.maybe(kit.signedWhole()) })
  const feels = steps()
  const mode = oneOf<Change['mode']>()(kit.column(), ['exact', 'atLeast', 'ifYouHaveIt'])
  const change = kit.signedWhole()
  const checkpoint = steps()
  const changes = group<Omit<Change, 'kind'>>({ mode, steps: change, checkpoint: kit.maybe(checkpoint) })
  return {
    write(value, to, place) {
      kind.write(kindOf(value), to, place)
      if (value.kind === 'change') return changes.write(value, to, place)
      if (value.kind === 'byFeel') feels.write(value, to, place)
      if (value.kind === 'total') {
        totals.write(value, to, place)
        aim.write(value, to, place)
      }
      const checked = checkpointOf(value)
      if (checked) checkpoint.write(checked, to, place)
    },
    read(from, place) {
      const read = kind.read(from, place)
      switch (read) {
        case 'change':
          return { kind: read, ...changes.read(from, place) }
        case 'byFeel':
          return { kind: read, ...feels.read(from, place) }
        case 'total':
        case 'checkedTotal': {
          const total = { kind: 'total' as const, ...totals.read(from, place), ...aim.read(from, place) }
          return read === 'total' ? total : { ...total, checkpoint: checkpoint.read(from, place) }
        }
        case 'checkedKeep':
          return { kind: 'keep', checkpoint: checkpoint.read(from, place) }
        case 'keep':
        case 'allOff':
          return { kind: read }
      }
    },
  }
}

/** "3 or more" is written as a range from 3 down to the step under it, which no range is. */
const openRange = (range: Shape<Range>): Shape<StepRange> =>
  mapped(
    range,
    ({ from, to, orMore }) => ({ from, to: orMore ? from - 1 : to }),
    ({ from, to }) => (to === from - 1 ? { from, to: from, orMore: true } : { from, to }),
  )

const cadenceLayout = (kit: Kit): Shape<Cadence> =>
  kit.either(
    (value): value is 'legsStill' => value === 'legsStill',
    oneOf<'legsStill'>()(kit.column(), ['legsStill']),
    group<{ rpm: number; rampTo?: number }>({ rpm: kit.anyNumber(), rampTo: kit.maybe(kit.anyNumber()) }),
  )

const moveLayout = (kit: Kit) =>
  group<Move>({
    name: kit.smallWords(),
    counts: kit.whole(),
    side: kit.maybe(kit.foot()),
    // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
    then: kit.maybe(oneOf<'alternate'>()(kit.column(), ['alternate'])),
  })

const cueLayout = (kit: Kit) =>
  group<Cue>({
    id: kit.id,
    moment: oneOf<Cue['moment']>()(kit.column(), ['announce', 'preview', 'countIn', 'action', 'form', 'story']),
    lead: lengthLayout(kit, near(kit.column(), changedAlike)),
    text: kit.words(),
    count: kit.maybe(oneOf<4 | 8>()(kit.column(), [4, 8])),
  })
