import { isJump } from '#engine/cadence/moves.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { type Block, isSet, tempoOf } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { Criterion, Drafted } from './criterion.ts'

/** A song of work has a block of this effort or more. */
const WORK = 6
/** Seated legs want a break sooner than this, and a break lasts at least so long. */
const SEATED_MOST: Seconds = 600
const BREAK: Seconds = 10
/** A proper rest before the finish: so much easy riding in one piece within so long before its first hard block, or what the bout before needs. */
const REST = { least: 45, effort: 4, within: 120 } as const

const peakOf = ({ effort }: Pick<Block, 'effort'>) => Math.max(effort.from, effort.to)
const isUp = ({ posture }: Block) => posture === 'standing' || posture === 'hovering'
const notBeginner = ({ ride }: Drafted) => ride.level !== 'beginner'
const blocksOf = ({ report }: Drafted, section: number) =>
  report.blocks.filter((played) => played.section === section && played.to > played.from)

/** Songs of work: those with a block of effort 6 or more. */
export function workSongs(drafted: Drafted): number[] {
  return drafted.ride.sections.flatMap((_, section) =>
    blocksOf(drafted, section).some(({ block }) => peakOf(block) >= WORK) ? [section] : [],
  )
}

/** What a block is ridden as. */
const keyOf = ({ terrain, posture, move }: Block) => `${terrain} ${posture}${move ? ` ${move.name} ${move.counts}` : ''}`

/** The shape of a song: what its blocks are ridden as, in order, neighbours of a kind as one, rounds in brackets. */
function shapeOf({ ride }: Drafted, section: number): string {
  const keys = ride.sections[section]!.blocks.map((item) => (isSet(item) ? `(${item.parts.map(keyOf).join(', ')})` : keyOf(item)))
  return keys.filter((key, i) => key !== keys[i - 1]).join(', ')
}

/** Share of the riding out of the saddle; of jumps half. */
export function standingShare({ report }: Drafted): number {
  const up = report.blocks.reduce(
    (sum, { block, from, to }) => sum + (isUp(block) ? (to - from) * (block.move && isJump(block.move.name) ? 0.5 : 1) : 0),
    0,
  )
  return up / report.measures.riding
}

/** The longest time with the legs turning and nobody out of the saddle for ten seconds. */
export function longestSeated({ report }: Drafted): Seconds {
  let longest = 0
  let since: Seconds | undefined
  for (const { block, cadence, from, to } of report.blocks) {
    if (to <= from) continue
    if (cadence.kind === 'still' || (isUp(block) && to - from >= BREAK)) since = undefined
    else {
      since ??= from
      longest = Math.max(longest, to - since)
    }
  }
  return longest
}

const seconds = (blocks: readonly PlayedBlock[]) => blocks.reduce((sum, { from, to }) => sum + to - from, 0)

/** Songs with beats whose legs turn off the beat for most of their time. */
export function offBeatSongs(drafted: Drafted): number[] {
  return drafted.ride.sections.flatMap(({ song }, section) => {
    const turning = blocksOf(drafted, section).filter(({ cadence }) => cadence.kind === 'turning')
    const off = turning.filter(({ strikesPerBeat }) => strikesPerBeat === null)
    return song?.grid && seconds(off) > seconds(turning) / 2 ? [section] : []
  })
}

/** Songs no strikes of which bring seated legs to 60–110 rev/min: off the beat whoever drafts. */
export const songsBetween = ({ ride }: Pick<Drafted, 'ride'>): number =>
  ride.sections.filter(
    ({ song }) => song?.grid && [0.5, 1, 2].every((s) => (tempoOf(song.grid!) * s) / 2 < 60 || (tempoOf(song.grid!) * s) / 2 > 110),
  ).length

/** Songs of the cool-down, which the trade rolls out off the beat: after the last song of work, easy throughout. */
function ofCoolDown(drafted: Drafted): Set<number> {
  const last = workSongs(drafted).at(-1) ?? -1
  return new Set([...drafted.ride.sections.keys()].filter((section) => section > last))
}

function restedBeforeFinish(drafted: Drafted): boolean | undefined {
  const { report } = drafted
  const { blocks, recovery, measures } = report
  const last = recovery.bouts.find(({ from }) => from === measures.lastHardest)
  if (!last) return undefined
  const section = blocks[last.fromBlock]!.section
  const index = recovery.bouts.findIndex(({ fromBlock }) => blocks[fromBlock]!.section === section)
  const [first, before] = [recovery.bouts[index]!, recovery.bouts[index - 1]]
  let best = 0
  let run = 0
  for (const { block, from, to } of blocks) {
    if (from >= first.from || to <= from) continue
    if (peakOf(block) > REST.effort) run = 0
    else run += Math.max(0, Math.min(to, first.from) - Math.max(from, first.from - REST.within))
    best = Math.max(best, run)
  }
  return best >= Math.max(REST.least, Math.min(before?.need ?? 0, REST.within)) - 0.5
}

function shapesDiffer(drafted: Drafted): boolean | undefined {
  const shapes = workSongs(drafted).map((section) => shapeOf(drafted, section))
  if (shapes.length < 2) return undefined
  if (shapes.some((shape, i) => shape === shapes[i - 1])) return false
  const most = Math.max(...shapes.map((shape) => shapes.filter((other) => other === shape).length))
  return most < 2 || most < shapes.length / 2
}

/** Builds that lie inside a song of work, each with whether effort rises in a straight line through at least half of it. */
export function buildsOf(drafted: Drafted): { section: number; ramped: boolean }[] {
  return workSongs(drafted).flatMap((section) => {
    const { song, inCount = 0 } = drafted.ride.sections[section]!
    const blocks = blocksOf(drafted, section)
    const offset = song!.grid!.anchors[0]![1]
    if (inCount !== 0) throw new Error('A drafted song begins at its first beat.')
    const begin = blocks[0]!.from - offset
    const builds = drafted.task.builds.get(song!.id) ?? []
    return builds
      .filter(
        ({ from, to }) =>
          blocks.at(-1)!.to - begin > to && blocks.some((b) => b.from <= begin + to && b.to >= begin + from && peakOf(b.block) >= 5),
      )
      .map(({ from, to }) => {
        const rising = blocks.filter(({ block }) => block.effort.to > block.effort.from)
        const overlap = rising.reduce((sum, b) => sum + Math.max(0, Math.min(b.to, begin + to) - Math.max(b.from, begin + from)), 0)
        return { section, ramped: overlap >= (to - from) / 2 }
      })
  })
}

/** In every song of work whose music builds, effort rises with it at least once. */
function rampsWithMusic(drafted: Drafted): boolean | undefined {
  const builds = buildsOf(drafted)
  if (builds.length === 0) return undefined
  return [...new Set(builds.map(({ section }) => section))].every((section) => builds.some((b) => b.section === section && b.ramped))
}

const movesOf = ({ report }: Drafted) => report.blocks.flatMap(({ block }) => block.move ?? [])

/** Every move is shown first at its slowest counts. */
function taughtFirst(drafted: Drafted): boolean | undefined {
  const moves = movesOf(drafted)
  if (moves.length === 0) return undefined
  return moves.every((move) => move.counts <= moves.find(({ name }) => name === move.name)!.counts)
}

const keysOf = (drafted: Drafted, section: number) => new Set(blocksOf(drafted, section).map(({ block }) => keyOf(block)))

/** Every song of work brings something ridden that was not ridden before. */
function somethingNew(drafted: Drafted): boolean | undefined {
  const seen = new Set<string>()
  return drafted.ride.sections.every((_, section) => {
    const own = keysOf(drafted, section)
    const isNew = [...own].some((key) => !seen.has(key))
    for (const key of own) seen.add(key)
    return isNew || !workSongs(drafted).includes(section)
  })
}

/** The last song of work has something ridden nowhere else. */
function hasSignature(drafted: Drafted): boolean | undefined {
  const last = workSongs(drafted).at(-1)
  if (last === undefined) return undefined
  const others = new Set(drafted.ride.sections.flatMap((_, section) => (section === last ? [] : [...keysOf(drafted, section)])))
  return [...keysOf(drafted, last)].some((key) => !others.has(key))
}

const without =
  (...rules: string[]) =>
  ({ report }: Drafted) =>
    report.findings.every(({ rule }) => !rules.includes(rule))

/** What is asked of how a draft is built. */
export const STRUCTURE: readonly Criterion[] = [
  {
    id: 'standing',
    words: 'standing a tenth, never more than 10 min seated (mixed and advanced)',
    aim: 1,
    judge: (drafted) => (notBeginner(drafted) ? standingShare(drafted) >= 0.1 && longestSeated(drafted) <= SEATED_MOST : undefined),
  },
  { id: 'offBeat', words: 'at most one song off the beat', aim: 0.95, judge: (drafted) => offBeatSongs(drafted).length <= 1 },
  {
    id: 'offBeatPossible',
    words: '… the same, of playlists with at most one song between 110 and 120',
    aim: 0.95,
    judge: (drafted) => (songsBetween(drafted) <= 1 ? offBeatSongs(drafted).length <= 1 : undefined),
  },
  {
    id: 'offBeatWork',
    words: '… the same, songs of the cool-down aside',
    aim: 0.95,
    judge: (drafted) => {
      const cool = ofCoolDown(drafted)
      return offBeatSongs(drafted).filter((section) => !cool.has(section)).length <= 1
    },
  },
  {
    id: 'rest',
    words: 'a proper rest before the finish',
    aim: 1,
    judge: (drafted) => (notBeginner(drafted) ? restedBeforeFinish(drafted) : undefined),
  },
  ...(['beginner', 'mixed', 'advanced'] as const).map((level) => ({
    id: `difficulty-${level}`,
    words: `difficulty within its band, ${level}`,
    aim: 0.95,
    judge: ({ ride, report }: Drafted) => (ride.level === level ? report.difficulty.level[level] === 'inside' : undefined),
  })),
  { id: 'shapes', words: 'no shape twice in a row, none in half of the work songs', aim: 0.95, judge: shapesDiffer },
  { id: 'ramps', words: 'effort ramps where the music builds', aim: 1, judge: rampsWithMusic },
  {
    id: 'moves',
    words: 'at least two moves (mixed and advanced)',
    aim: 0.95,
    judge: (d) => (notBeginner(d) ? new Set(movesOf(d).map(({ name }) => name)).size >= 2 : undefined),
  },
  { id: 'taught', words: 'moves shown at their slowest counts first', aim: 1, judge: taughtFirst },
  { id: 'new', words: 'something new in every song of work', aim: 0.9, judge: somethingNew },
  { id: 'signature', words: 'the last song of work has a signature', aim: 0.95, judge: hasSignature },
]

/** What held in every draft and has to go on holding. */
export const HELD: readonly Criterion[] = [
  { id: 'warmUp', words: 'warm-up', aim: 1, judge: without('warmUp') },
  { id: 'coolDown', words: 'cool-down', aim: 1, judge: without('coolDown') },
  {
    id: 'length',
    words: 'class length',
    aim: 1,
    judge: ({ report }) => report.overall.slack >= -0.5 && report.sections.every(({ beyond }) => beyond === 0),
  },
  { id: 'cadence', words: 'cadence bounds', aim: 1, judge: without('cadenceBounds') },
  { id: 'ledger', words: 'ledger', aim: 1, judge: without('knobEnds', 'underBase', 'beyondOut', 'endsHeavy', 'openEnd') },
  { id: 'problems', words: 'no problem', aim: 1, judge: ({ report }) => report.findings.every(({ severity }) => severity !== 'problem') },
  {
    id: 'warnings',
    words: 'three warnings at most',
    aim: 1,
    judge: ({ report }) => report.findings.filter(({ severity }) => severity === 'warning').length <= 3,
  },
]
