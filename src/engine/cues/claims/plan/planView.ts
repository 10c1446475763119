import type { Constants } from '#engine/constants.ts'
import { countedMembers, type Members } from '#engine/cues/family.ts'
import { type SectionClock, sectionClock } from '#engine/cues/sectionClock.ts'
import type { Ledger } from '#engine/ledger/keepLedger.ts'
import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import type { Speech } from '#engine/speech/speech.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Resistance, Ride, SetBlock } from '#plan/model.ts'

/** Ways in which neighbouring blocks of a section are one stretch to whoever rides them. */
export const ALIKE = ['work', 'terrain', 'posture', 'set', 'round'] as const
type Alike = (typeof ALIKE)[number]

/** First and last block of a stretch. */
interface Run {
  first: number
  last: number
}

/** A set, and the index of the first block that is played of it. */
interface SetPlace {
  set: SetBlock
  first: number
}

/** The plan as claims are checked against it; what is asked for is worked out once. */
export interface PlanView {
  ride: Ride
  blocks: readonly PlayedBlock[]
  sections: readonly SectionReport[]
  rules: Constants
  speech: Speech
  /** The call of a block in its very round. */
  callOf: (block: number) => Resistance
  /** The stretch of like blocks a block stands in, in its section; null where it stands in no set. */
  runOf: (block: number, alike: Alike) => Run | null
  /** The blocks of a section. */
  blocksOf: (section: number) => readonly PlayedBlock[]
  /** The sets of a section in order, each with its first block. */
  setsIn: (section: number) => readonly SetPlace[]
  /** The members of a kind in a section, in order. */
  membersIn: (section: number, kind: string) => Members
  /** The last block at work before one, in its section. */
  lastWork: (block: number) => PlayedBlock | undefined
  clockOf: (section: number) => SectionClock
  works: (played: PlayedBlock) => boolean
}

/** Cost: linear in the blocks for every way of being alike and every kind that is asked for. */
export function viewPlan(
  ride: Ride,
  blocks: readonly PlayedBlock[],
  sections: readonly SectionReport[],
  ledger: Ledger,
  rules: Constants,
): PlanView {
  const speech = speechOf(ride)
  const works = ({ block }: PlayedBlock): boolean => Math.max(block.effort.from, block.effort.to) >= rules.workEffort
  const runs = once((alike: Alike) => runsOf(blocks, (played) => sameAs(played, alike, works)))
  const blocksOf = once((section: number) => blocks.slice(sections[section]!.blocks.from, sections[section]!.blocks.to))
  const members = once((section: number) => once((kind: string) => countedMembers(kind, blocksOf(section), speech)))
  const lastWorks = once((_: 0) => worksBefore(blocks, works))
  return {
    ride,
    blocks,
    sections,
    rules,
    speech,
    callOf: (block) => ledger.lines[block]!.call,
    runOf: (block, alike) => (isSet(alike) && !blocks[block]!.set ? null : runs(alike)[block]!),
    blocksOf,
    setsIn: once((section: number) => setsAmong(blocksOf(section))),
    membersIn: (section, kind) => members(section)(kind),
    lastWork: (block) => lastWorks(0)[block],
    clockOf: once((section: number) => sectionClock(ride.sections[section]!, sections[section]!.one)),
    works,
  }
}

function setsAmong(blocks: readonly PlayedBlock[]): SetPlace[] {
  const places = new Map<string, SetPlace>()
  for (const { set, index } of blocks) if (set && !places.has(set.set.id)) places.set(set.set.id, { set: set.set, first: index })
  return [...places.values()]
}

function worksBefore(blocks: readonly PlayedBlock[], works: PlanView['works']): (PlayedBlock | undefined)[] {
  let last: PlayedBlock | undefined
  return blocks.map((played, i) => {
    if (i > 0 && blocks[i - 1]!.section !== played.section) last = undefined
    const before = last
    if (works(played)) last = played
    return before
  })
}

const isSet = (alike: Alike): boolean => alike === 'set' || alike === 'round'

function sameAs(played: PlayedBlock, alike: Alike, works: PlanView['works']): string | boolean {
  switch (alike) {
    case 'work':
      return works(played)
    case 'terrain':
      return played.block.terrain
    case 'posture':
      return played.block.posture
    case 'set':
      return played.set?.set.id ?? ''
    case 'round':
      return played.set ? `${played.set.round} ${played.set.set.id}` : ''
  }
}

function runsOf(blocks: readonly PlayedBlock[], of: (played: PlayedBlock) => string | boolean): Run[] {
  const runs: Run[] = []
  let run: Run | undefined
  let last: string | boolean | undefined
  for (const played of blocks) {
    const is = of(played)
    if (run === undefined || is !== last || blocks[run.last]!.section !== played.section) run = { first: played.index, last: played.index }
    run.last = played.index
    last = is
    runs.push(run)
  }
  return runs
}

/** A function that works out each answer once. */
function once<Key extends string | number, Answer>(work: (key: Key) => Answer): (key: Key) => Answer {
  const known = new Map<Key, Answer>()
  return (key) => {
    if (!known.has(key)) known.set(key, work(key))
    return known.get(key)!
  }
}
