import type { Finding, Fix } from '#engine/report.ts'
import { editSection } from '#plan/edits.ts'
import { type Item, isSet, type Section } from '#plan/model.ts'
import type { Counts } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atSection, fix, measured, type Noticed, quotedSection } from './finding.ts'
import { lengthFix } from './fixes/lengthFix.ts'

/** By the clock, less than a second of music over is no gap anyone hears. */
const SHORTEST_TAIL_SECONDS = 1

/** The end of a song that no block covers. A section without any block is another rule's. */
export function openTail(facts: Facts): Finding[] {
  return facts.sections.flatMap((report, index) => {
    const { open, unit, counts, to } = report
    const section = facts.ride.sections[index]!
    if (section.blocks.length === 0 || (counts ? !(open > 0) : open < SHORTEST_TAIL_SECONDS)) return []
    const noticed: Noticed = {
      rule: 'openTail',
      severity: 'warning',
      text: say('checksRide.openTail', { tail: measured(section, open, unit.eight), song: quotedSection(facts, index) }),
      why: ARITHMETIC,
      amount: open,
      fixes: () => [extend(section.blocks.at(-1)!, counts ? open : Math.floor(open), unit.eight), moveOut(section, counts, open)],
    }
    return [atSection(facts, index, noticed, Math.max(report.one, tailStart(facts, index) ?? to))]
  })
}

const tailStart = ({ spans, sections }: Facts, index: number): number | undefined =>
  spans.find(({ kind, sectionId }) => kind === 'openTail' && sectionId === sections[index]!.sectionId)?.from

/** The last block takes the rest; in a set, the last part takes its share in every round where that comes out even. */
function extend(last: Item, open: number, eight: Counts): Fix | undefined {
  if (!isSet(last)) return lengthFix(last, open, eight)
  return open % last.rounds === 0 ? lengthFix(last.parts.at(-1)!, open / last.rounds, eight) : undefined
}

function moveOut({ id }: Section, counts: Facts['sections'][number]['counts'], open: number): Fix | undefined {
  if (!counts) return undefined
  const outCount = counts.out - open
  return fix(say('checksRide.endWithLastBlock'), say('checksRide.endedWithLastBlock'), (ride) =>
    editSection(ride, id, (section) => ({ ...section, outCount })),
  )
}
