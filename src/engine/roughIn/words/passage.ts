import { isJump, plainMove } from '#engine/cadence/moves.ts'
import type { Constants } from '#engine/constants.ts'
import type { Change } from '#engine/cues/changeAt.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import type { Block, Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { type Load, loadsOf } from './load.ts'

/** What a block is to somebody who leads it: words are kept by kind. */
export type Kind =
  | 'flat'
  | 'tempo'
  | 'climb'
  | 'tallClimb'
  | 'tallFlat'
  | 'run'
  | 'jumps'
  | 'move'
  | 'surge'
  | 'push'
  | 'recover'
  | 'flush'
  | 'stretch'
  | 'hold'

/** What a song is for in the arc of the class. */
type Role = 'warmUp' | 'work' | 'recovery' | 'finish' | 'coolDown'

/** One block of the plan as it is played, once or in every round of its set, with all that words about it rest on. */
export interface Passage {
  block: Block
  /** Every time it is played; the first one stands for what is the same each time. */
  times: readonly PlayedBlock[]
  kind: Kind
  load: Load
  seconds: Seconds
  section: number
  /** The first of its section, or of the class. */
  opens: 'class' | 'section' | null
  change: Change | undefined
  /** The block before it as it is played first; undefined at the start of the class. */
  before: PlayedBlock | undefined
  after: PlayedBlock | undefined
  /** Hard or out of the saddle: what riders want told how long it is. */
  isEffort: boolean
  /** Its place among the like efforts of its song, from 1, and how many there are; rounds of a set count themselves. */
  row: { place: number; of: number } | null
  /** The move is shown here for the first time. */
  isNew: boolean
  /** The feet land on the song's beat. */
  onBeat: boolean
  role: Role
  /** In the last song of the class. */
  isLast: boolean
}

/** Standing is an effort from here on (common practice). */
const STANDING_EFFORT = 6

/** The blocks of the ride in order, each once. */
export function passagesOf(ride: Ride, report: RideReport, rules: Constants, roles: readonly Role[]): Passage[] {
  const ridden = report.blocks.filter(({ from, to }) => to > from)
  const loads = loadsOf(ride, report)
  const changes = new Map(report.cues.changes.map((change) => [change.block, change]))
  const firsts = new Set(report.cues.showings.map(({ first }) => first))
  const passages: Passage[] = []
  for (const [at, played] of ridden.entries()) {
    if (passages.some(({ block }) => block.id === played.block.id)) continue
    const before = ridden[at - 1]
    const times = ridden.filter(({ block }) => block.id === played.block.id)
    const kind = kindOf(played.block)
    const load = loads[played.index]!
    passages.push({
      block: played.block,
      times,
      kind,
      load,
      seconds: played.to - played.from,
      section: played.section,
      opens: before === undefined ? 'class' : before.section !== played.section ? 'section' : null,
      change: changes.get(played.index),
      before,
      after: ridden[at + 1],
      isEffort: isEffort(kind, load, rules),
      row: null,
      isNew: firsts.has(played.index),
      onBeat: played.strikesPerBeat !== null,
      role: roles[played.section] ?? 'work',
      isLast: played.section === ridden.at(-1)!.section,
    })
  }
  return withRows(passages)
}

function isEffort(kind: Kind, { to }: Load, rules: Constants): boolean {
  if (kind === 'recover' || kind === 'flush' || kind === 'stretch') return false
  if (to >= rules.workEffort) return true
  // Up for a moment is a break for the seat, and no effort.
  return (
    kind === 'jumps' ||
    kind === 'move' ||
    kind === 'surge' ||
    kind === 'push' ||
    ((kind === 'tallClimb' || kind === 'run') && to >= STANDING_EFFORT)
  )
}

function withRows(passages: readonly Passage[]): Passage[] {
  return passages.map((passage) => {
    if (!passage.isEffort || passage.times.length > 1) return passage
    const alike = passages.filter(
      ({ section, kind, isEffort, block }) =>
        section === passage.section && kind === passage.kind && isEffort && block.move?.name === passage.block.move?.name,
    )
    if (alike.some(({ times }) => times.length > 1)) return passage
    return { ...passage, row: { place: alike.findIndex(({ block }) => block.id === passage.block.id) + 1, of: alike.length } }
  })
}

export function kindOf({ terrain, posture, move, cadence }: Pick<Block, 'terrain' | 'posture' | 'move' | 'cadence'>): Kind {
  if (terrain === 'stretch' || cadence === 'legsStill') return 'stretch'
  if (move && isJump(move.name)) return 'jumps'
  if (terrain === 'jumps') return 'jumps'
  if (terrain === 'recover' || terrain === 'flush') return terrain
  if (move && posture !== 'seated') return 'move'
  if (terrain === 'push' || terrain === 'surge') return terrain
  if (terrain === 'run') return posture === 'seated' ? 'tempo' : 'run'
  if (posture === 'standing' || posture === 'hovering') return terrain === 'hill' ? 'tallClimb' : 'tallFlat'
  if (terrain === 'hill') return 'climb'
  if (terrain === 'hold') return 'hold'
  return terrain === 'tempo' ? 'tempo' : 'flat'
}

/** What a move is looked up by: "side lean", "jump", "travel-back". */
export const moveKey = ({ move }: Pick<Block, 'move'>): string => (move ? plainMove(move.name) : '')
