import type { Finding, Fix, PlayedBlock } from '#engine/report.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { Block, Ride } from '#plan/model.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import type { Facts } from './facts.ts'

/** What a rule says, before it is given its place. */
export type Noticed = Pick<Finding, 'rule' | 'severity' | 'text' | 'why' | 'amount'> & { fixes?: (Fix | undefined)[] }

export const COMMON_PRACTICE = 'common practice'
export const ARITHMETIC = 'arithmetic'

/** A finding about one played block. */
export function atBlock({ blocks }: Facts, index: number, noticed: Noticed): Finding {
  const { block, sectionId, from } = blocks[index]!
  return placed(noticed, block.id, from, sectionId, block.id, index)
}

/** A finding about a section, pointing at its count one unless another moment is given. */
export function atSection({ sections }: Facts, index: number, noticed: Noticed, at = sections[index]!.one): Finding {
  const { sectionId } = sections[index]!
  return placed(noticed, sectionId, at, sectionId)
}

/** A finding about the ride as a whole. */
export const ofRide = (noticed: Noticed, at = 0): Finding => placed(noticed, 'ride', at)

/** Written field by field: findings are made by the hundred while a block is dragged. */
function placed(noticed: Noticed, place: string, at: Seconds, sectionId?: string, blockId?: string, block?: number): Finding {
  const { rule, severity, text, why, amount, fixes } = noticed
  const offered = fixes ? fixes.filter((fix) => fix !== undefined) : NONE
  return { id: `${rule}:${place}`, rule, severity, text, why, at, sectionId, blockId, block, amount, fixes: offered, proposed: offered }
}

const NONE: readonly Fix[] = []

/** A repair: its name in the imperative, its name once done, and what it changes. */
export const fix = (label: string, done: string, apply: (ride: Ride) => Ride): Fix => ({ label, command: makeCommand(done, apply) })

/** Findings of a rule that looks at every played block by itself; blocks a crossfade swallows are passed over. */
export function eachBlock(facts: Facts, judge: (played: PlayedBlock) => Noticed | undefined): Finding[] {
  const found: Finding[] = []
  for (const played of facts.blocks) {
    const noticed = played.to > played.from ? judge(played) : undefined
    if (noticed) found.push(atBlock(facts, played.index, noticed))
  }
  return found
}

/** Every time a block is played: once, or in each round of its set. */
export function playsOf({ blocks }: Facts, played: PlayedBlock): PlayedBlock[] {
  const { set, index } = played
  if (!set) return [played]
  const { rounds, parts } = set.set
  const first = index - (set.round - 1) * parts.length
  return Array.from({ length: rounds }, (_, round) => blocks[first + round * parts.length]!)
}

/** A block's name in quotes. */
export const inQuotes = (block: Block): string => `“${nameOfItem(block)}”`

/** A played block's name in quotes. */
export const quoted = ({ blocks }: Facts, index: number): string => inQuotes(blocks[index]!.block)

/** A section's name in quotes; unquoted where it is only its place ("section 2"). */
export function quotedSection({ ride }: Facts, index: number): string {
  const section = ride.sections[index]!
  const name = nameOfSection(ride, section)
  return section.title || section.song?.title ? `“${name}”` : name
}
