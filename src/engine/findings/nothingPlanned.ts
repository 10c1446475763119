import type { Finding } from '#engine/report.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atSection, ofRide, quotedSection } from './finding.ts'

/** A ride without sections, and sections without blocks. */
export function nothingPlanned(facts: Facts): Finding[] {
  const { sections } = facts.ride
  if (sections.length === 0) {
    return [ofRide({ rule: 'noSections', severity: 'hint', text: 'There is no song or section in this ride yet.', why: ARITHMETIC })]
  }
  return sections.flatMap((section, index) => {
    if (section.blocks.length > 0) return []
    const text = `${capital(quotedSection(facts, index))} has no block yet.`
    return [atSection(facts, index, { rule: 'noBlocks', severity: 'hint', text, why: ARITHMETIC })]
  })
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
