import { accentPeriod } from '#engine/cadence/moves.ts'
import { otherFoot } from '#engine/cadence/trackFeet.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import { editSection } from '#plan/edits.ts'
import type { Foot } from '#plan/model.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atBlock, atSection, COMMON_PRACTICE, fix, type Noticed, quoted, quotedSection } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Where the lead foot changes by itself, is lost, or does not land on the one. */
export function footOnOne(facts: Facts): Finding[] {
  const told = facts.blocks.flatMap((played) => {
    const noticed = judge(facts, played)
    return noticed ? [atBlock(facts, played.index, noticed)] : []
  })
  return [...told, ...leadUnset(facts)]
}

/** Songs with one-sided accents whose lead foot nobody has named: they count for neither leg. */
function leadUnset(facts: Facts): Finding[] {
  return facts.ride.sections.flatMap((section, index) => {
    const { from, to } = facts.sections[index]!.blocks
    const open = facts.blocks.slice(from, to).find((played) => hasOpenAccents(facts, played))
    if (section.lead || !open) return []
    const song = quotedSection(facts, index)
    const text = say('checksRiding.leadUnset', { song, block: quoted(facts, open.index) })
    const lead = (foot: Foot) =>
      fix(say('checksRiding.lead', { foot }), say('checksRide.ledWith', { song, foot }), (ride) =>
        editSection(ride, section.id, (before) => ({ ...before, lead: foot })),
      )
    return [
      atSection(facts, index, { rule: 'leadUnset', severity: 'hint', text, why: COMMON_PRACTICE, fixes: [lead('right'), lead('left')] }),
    ]
  })
}

function hasOpenAccents({ footings }: Facts, { index, block, foot, strikesPerBeat, countFrom }: PlayedBlock): boolean {
  const { move } = block
  if (!move || move.then === 'alternate' || countFrom === undefined) return false
  if (foot !== null || strikesPerBeat === null || footings[index]!.lost) return false
  return accentPeriod(move.name) !== undefined && block.cadence !== 'legsStill' && block.posture !== 'offBike'
}

function judge(facts: Facts, { index, section, block, foot, footSpoken, set }: PlayedBlock): Noticed | undefined {
  const { lost } = facts.footings[index]!
  const before = facts.footings[index - 1]
  // Told once, where the foot is lost; the blocks after it follow.
  if (lost && before?.lost === lost && facts.blocks[index - 1]!.section === section) return undefined
  const here = quoted(facts, index)
  const lead = (side: Foot) =>
    blockFix(block, say('checksRiding.lead', { foot: side }), say('checksRiding.led', { block: here, foot: side }), { lead: side })
  if (lost === 'between') {
    const text = say('checksRiding.noFootOnOne', { block: here })
    return { rule: 'noFootOnOne', severity: 'warning', text, why: ARITHMETIC, fixes: [lead('right'), lead('left')] }
  }
  if (lost === 'offBeat') {
    const text = say('checksRiding.leadOpen', { block: here })
    return { rule: 'leadOpen', severity: 'hint', text, why: ARITHMETIC, fixes: [lead('right'), lead('left')] }
  }
  const flipped = before?.flips && facts.blocks[index - 1]!.section === section && foot && foot === otherFoot(before.foot!)
  if (!flipped || footSpoken || block.lead === 'left' || block.lead === 'right') return undefined
  const text = say('checksRiding.footFlips', { foot, block: here, before: quoted(facts, index - 1) })
  // In a set the other rounds may start on the other foot, so no one name holds.
  const steady = set && set.set.rounds > 1 ? undefined : lead(otherFoot(foot))
  return { rule: 'footFlips', severity: 'hint', text, why: ARITHMETIC, fixes: [steady] }
}
