import { canSnap, snapSection } from '#engine/alignment/snapSection.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import type { Section } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import type { Counts } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** A block under a song that is not whole eights (sixes in three and six), unless it closes one: the next change falls inside a phrase. */
export function crookedBlock(facts: Facts): Finding[] {
  return eachBlock(facts, (played) => judge(facts, played))
}

function judge(facts: Facts, played: PlayedBlock): Noticed | undefined {
  const { block, section } = played
  const { eight } = facts.sections[section]!.unit
  if (!('counts' in block.length) || !isCrooked(played, facts.ride.sections[section]!, eight) || endsItsSong(facts, played))
    return undefined
  const { counts } = block.length
  const rest = counts % eight
  const whole = Math.max(1, Math.round(counts / eight)) * eight
  const here = quotedItem(block)
  const size = { counts: whole, unit: eight }
  return {
    rule: 'crookedBlock',
    severity: 'hint',
    text: say('checksRide.crookedBlock', { block: here, counts, unit: eight }),
    why: COMMON_PRACTICE,
    amount: Math.min(rest, eight - rest),
    fixes: [
      blockFix(block, say('checksRide.makeLength', size), say('checksRide.madeLength', { block: here, ...size }), {
        length: { counts: whole },
      }),
      snapWhole(facts, facts.ride.sections[section]!, eight),
    ],
  }
}

/** With the out-point ends the song's part in the ride: no change of its own falls inside a phrase after it. */
const endsItsSong = ({ sections, blocks }: Facts, { index, section, countTo }: PlayedBlock): boolean => {
  const { counts } = sections[section]!
  return counts !== undefined && countTo === counts.out - counts.in && blocks[index + 1]?.section !== section
}

/** Whether a block is some counts over whole eights and leaves the music's own eights with them. */
export function isCrooked({ block, countTo }: Pick<PlayedBlock, 'block' | 'countTo'>, { inCount = 0 }: Section, eight: Counts): boolean {
  if (!('counts' in block.length) || countTo === undefined) return false
  return block.length.counts % eight !== 0 && (inCount + countTo) % eight !== 0
}

/** The moving is left to the moment it is asked for: every crooked block offers it. */
function snapWhole(facts: Facts, section: Section, eight: Counts): Fix | undefined {
  if (!canSnap(section)) return undefined
  return { label: say('checksRide.snapSong', { unit: eight }), command: snapSection(facts.ride, section.id) }
}
