import type { Finding } from '#engine/report.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atSection, ofRide, quotedSection } from './finding.ts'

/** A ride without sections, and sections without blocks. */
export function nothingPlanned(facts: Facts): Finding[] {
  const { sections } = facts.ride
  if (sections.length === 0) {
    return [ofRide({ rule: 'noSections', severity: 'hint', text: say('checksRide.noSections'), why: ARITHMETIC })]
  }
  return sections.flatMap((section, index) => {
    if (section.blocks.length > 0) return []
    const text = say('checksRide.noBlocks', { song: quotedSection(facts, index) })
    return [atSection(facts, index, { rule: 'noBlocks', severity: 'hint', text, why: ARITHMETIC })]
  })
}
