import { isJump, plainMove } from '#engine/cadence/moves.ts'
import { type Block, type Item, isSet, type Section } from '#plan/model.ts'
import { kindOf } from './passage.ts'

/**
 * The blocks of a section, each called what is ridden in it. Pushes and surges that come more than once are numbered, as
 * leaders count them.
 */
export function labelled({ blocks }: Pick<Section, 'blocks'>): Item[] {
  const counted = new Map<string, number>()
  const total = (label: string) => blocks.filter((item) => !isSet(item) && labelOf(item) === label).length
  return blocks.map((item): Item => {
    if (isSet(item)) {
      const parts = item.parts.map((part) => ({ ...part, label: labelOf(part) }))
      const work = parts.find(({ terrain }) => terrain !== 'recover') ?? parts[0]!
      return { ...item, label: plural(work.label), parts }
    }
    const label = labelOf(item)
    if (!/(?:push|surge)$/.test(label) || total(label) < 2) return { ...item, label }
    const number = (counted.get(label) ?? 0) + 1
    counted.set(label, number)
    return { ...item, label: `${label} ${number}` }
  })
}

/** What one block is called: its move, or how it is ridden and on what. */
export function labelOf(block: Pick<Block, 'terrain' | 'posture' | 'move' | 'cadence' | 'effort'>): string {
  const { terrain, posture, move, effort } = block
  const most = Math.max(effort.from, effort.to)
  const isStanding = posture === 'standing' || posture === 'hovering'
  if (move && terrain !== 'stretch') {
    const name = plural(plainMove(move.name))
    return isJump(move.name) || move.counts < 8 ? `${name} on ${move.counts}` : name
  }
  switch (kindOf(block)) {
    case 'climb':
      return most < 5 ? 'low hill' : 'seated climb'
    case 'tallClimb':
      return posture === 'hovering' ? 'hover climb' : 'standing climb'
    case 'tallFlat':
      return posture === 'hovering' ? 'hover' : 'standing flat'
    case 'run':
      return 'standing run'
    case 'flat':
      return most <= 3 ? 'easy flat' : most >= 7 ? 'strong flat' : most >= 5 ? 'brisk flat' : 'flat'
    case 'tempo':
      return most < 5 ? 'steady flat' : 'tempo'
    case 'hold':
      return isStanding ? 'standing hold' : 'seated hold'
    case 'recover':
      return 'recover'
    case 'flush':
      return 'roll out'
    case 'stretch':
      return 'stretch'
    case 'jumps':
      return 'jumps'
    case 'push':
      return isStanding ? 'standing push' : 'push'
    case 'surge':
      return isStanding ? 'standing surge' : 'surge'
    default:
      return terrain
  }
}

const plural = (name: string): string => (/(?:s|sh|ch|x)$/.test(name) ? `${name}es` : `${name}s`)
