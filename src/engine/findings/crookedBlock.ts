import { snapToEights } from '#engine/alignment/snapToEights.ts'
import type { Finding, Fix, PlayedBlock } from '#engine/report.ts'
import { editSection, mapSame, withItems } from '#plan/edits.ts'
import { isSet, type Section } from '#plan/model.ts'
import { amountOf } from '#plan/remeasure.ts'
import { formatEights } from '#units/formatEights.ts'
import type { Counts } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, fix, inQuotes, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** A block under a song that is not whole eights (sixes in three and six): the next change falls inside a phrase. */
export function crookedBlock(facts: Facts): Finding[] {
  return eachBlock(facts, (played) => judge(facts, played))
}

function judge(facts: Facts, played: PlayedBlock): Noticed | undefined {
  const { block, section } = played
  if (!('counts' in block.length) || played.countFrom === undefined) return undefined
  const { eight, name } = facts.sections[section]!.unit
  const { counts } = block.length
  const rest = counts % eight
  if (rest === 0) return undefined
  const whole = Math.max(1, Math.round(counts / eight)) * eight
  const size = formatEights(whole, eight)
  return {
    rule: 'crookedBlock',
    severity: 'hint',
    text: `${inQuotes(block)} is ${formatEights(counts, eight)}, not whole ${name === 'six' ? 'sixes' : 'eights'}.`,
    why: COMMON_PRACTICE,
    amount: Math.min(rest, eight - rest),
    fixes: [
      blockFix(block, `Make it ${size}`, `Made ${inQuotes(block)} ${size}`, { length: { counts: whole } }),
      snapSection(facts.ride.sections[section]!, eight, name),
    ],
  }
}

/**
 * All changes of the section moved onto eights by the least total movement. The moving is left
 * to the moment it is asked for: every crooked block offers it. A section with sets keeps its
 * rounds equal and is left alone.
 */
function snapSection({ id, blocks }: Section, eight: Counts, name: 'eight' | 'six'): Fix | undefined {
  if (blocks.length < 2 || blocks.some(isSet)) return undefined
  const label = `Snap every block of the song to ${name === 'six' ? 'sixes' : 'eights'}`
  return fix(label, label.replace('Snap', 'Snapped'), (ride) => editSection(ride, id, (section) => snapped(section, eight)))
}

function snapped(section: Section, eight: Counts): Section {
  let end = 0
  const ends = section.blocks.map((item) => {
    end += isSet(item) ? 0 : amountOf(item.length)
    return end
  })
  const moved = snapToEights(ends, eight)
  const lengths = moved.map((boundary, i) => boundary - (moved[i - 1] ?? 0))
  return withItems(
    section,
    mapSame(section.blocks, (item, i) =>
      isSet(item) || amountOf(item.length) === lengths[i] ? item : { ...item, length: { counts: lengths[i]! } },
    ),
  )
}
