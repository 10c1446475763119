import { constantsOf } from '#engine/constants.ts'
import type { NewId } from '#plan/copies.ts'
import { type Block, isCounted, type Ride, type Section } from '#plan/model.ts'
import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { blockFromPattern } from '#plan/patterns/patterns.ts'
import { usualLead } from './usualPlace.ts'

/** A block made from a pattern, with its words where the studio's rules have an announcement. */
export function blockOfPattern(pattern: BlockPattern, ride: Ride, section: Section, newId: NewId): Block {
  const block = blockFromPattern(pattern, ride, section, newId)
  const lead = usualLead('announce', constantsOf(ride), isCounted(section))
  return { ...block, cues: block.cues.map((cue) => ({ ...cue, lead })) }
}
