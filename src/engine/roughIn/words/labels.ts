import { isJump, plainMove } from '#engine/cadence/moves.ts'
import { type Block, type Item, isSet, type Section } from '#plan/model.ts'
import { kindOf } from './passage.ts'
import type { NameKey, Voice } from './voice.ts'

/** What one block is called, in no language yet: its move, or how it is ridden and on what. */
type BlockName = { key: NameKey } | { move: string; counts: number | undefined }

/** Leaders count these. */
const COUNTED: ReadonlySet<NameKey> = new Set(['push', 'standingPush', 'surge', 'standingSurge'])

/**
 * The blocks of a section, each called what is ridden in it. Pushes and surges that come more than once are numbered, as
 * leaders count them.
 */
export function labelled({ blocks }: Pick<Section, 'blocks'>, { names }: Pick<Voice, 'names'>): Item[] {
  const counted = new Map<string, number>()
  const label = (name: BlockName) => ('key' in name ? names.block(name.key) : names.move(name.move, name.counts))
  const total = (key: NameKey) =>
    blocks.filter((item) => {
      const name = !isSet(item) && nameOf(item)
      return name && 'key' in name && name.key === key
    }).length
  return blocks.map((item): Item => {
    if (isSet(item)) {
      const parts = item.parts.map((part) => ({ ...part, label: label(nameOf(part)) }))
      const name = nameOf(item.parts.find(({ terrain }) => terrain !== 'recover') ?? item.parts[0]!)
      return { ...item, label: 'key' in name ? names.rounds(name.key) : label(name), parts }
    }
    const name = nameOf(item)
    if (!('key' in name) || !COUNTED.has(name.key) || total(name.key) < 2) return { ...item, label: label(name) }
    const number = (counted.get(name.key) ?? 0) + 1
    counted.set(name.key, number)
    return { ...item, label: `${label(name)} ${number}` }
  })
}

export function nameOf(block: Pick<Block, 'terrain' | 'posture' | 'move' | 'cadence' | 'effort'>): BlockName {
  const { terrain, move } = block
  if (move && terrain !== 'stretch')
    return { move: plainMove(move.name), counts: isJump(move.name) || move.counts < 8 ? move.counts : undefined }
  return { key: keyOf(block) }
}

function keyOf(block: Pick<Block, 'terrain' | 'posture' | 'move' | 'cadence' | 'effort'>): NameKey {
  const { posture, effort } = block
  const most = Math.max(effort.from, effort.to)
  const isStanding = posture === 'standing' || posture === 'hovering'
  const kind = kindOf(block)
  switch (kind) {
    case 'climb':
      return most < 5 ? 'lowHill' : 'seatedClimb'
    case 'tallClimb':
      return posture === 'hovering' ? 'hoverClimb' : 'standingClimb'
    case 'tallFlat':
      return posture === 'hovering' ? 'hover' : 'standingFlat'
    case 'run':
      return 'standingRun'
    case 'move':
    case 'flat':
      return most <= 3 ? 'easyFlat' : most >= 7 ? 'strongFlat' : most >= 5 ? 'briskFlat' : 'flat'
    case 'tempo':
      return most < 5 ? 'steadyFlat' : 'tempo'
    case 'hold':
      return isStanding ? 'standingHold' : 'seatedHold'
    case 'flush':
      return 'rollOut'
    case 'push':
      return isStanding ? 'standingPush' : 'push'
    case 'surge':
      return isStanding ? 'standingSurge' : 'surge'
    default:
      return kind
  }
}
