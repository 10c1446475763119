import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, fix, inQuotes, type Noticed, quoted } from '#engine/findings/finding.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import { fieldsOfRoles, type Roles, rolesOf } from '#plan/rolesOf.ts'
import { formatEights } from '#units/formatEights.ts'
import { saidName, sameRoles } from './saidName.ts'

/** Where the lead or the microphone changes hands: at the end of a phrase, and never while riders push. */
export function handOvers(facts: Facts): Finding[] {
  if (facts.ride.leaders.length < 2) return []
  const ridden = facts.blocks.filter(({ from, to }) => to > from)
  return ridden.flatMap((now, i) => {
    const before = ridden[i - 1]
    if (!before) return []
    const [had, has] = [rolesOf(facts.ride, before.block), rolesOf(facts.ride, now.block)]
    if (sameRoles(had, has)) return []
    const noticed = inPush(facts, ridden, i, had, has) ?? offPhrase(facts, before, now, had, has)
    return noticed ? [atBlock(facts, now.index, noticed)] : []
  })
}

/** Effort stays at work on both sides of the change of hands. */
function inPush(facts: Facts, ridden: readonly PlayedBlock[], at: number, had: Roles, has: Roles): Noticed | undefined {
  const [before, now] = [ridden[at - 1]!, ridden[at]!]
  const { workEffort } = facts.rules
  if (before.block.effort.to < workEffort || now.block.effort.from < workEffort) return undefined
  return {
    rule: 'handOverInPush',
    severity: before.section === now.section ? 'warning' : 'hint',
    text: `${takesOver(facts, had, has)} at ${quoted(facts, now.index)}, in the middle of a push; change hands where riders recover.`,
    why: COMMON_PRACTICE,
    fixes: () => [afterPush(facts, ridden, at, had, has)],
  }
}

/** The one who had it keeps it until the push is over; rounds share their blocks, so in a set there is no such place. */
function afterPush({ ride, rules }: Facts, ridden: readonly PlayedBlock[], at: number, had: Roles, has: Roles): Fix | undefined {
  let end = at
  while (end < ridden.length && ridden[end]!.block.effort.from >= rules.workEffort && sameRoles(rolesOf(ride, ridden[end]!.block), has))
    end++
  const kept = ridden.slice(at, end)
  if (kept.some(({ set }) => set) || end === ridden.length) return undefined
  const ids = new Set(kept.map(({ block }) => block.id))
  return fix(`Change hands at ${inQuotes(ridden[end]!.block)}`, `Moved the change of hands to ${inQuotes(ridden[end]!.block)}`, (before) =>
    editSections(before, (section) =>
      editBlocksOf(section, (block) => (ids.has(block.id) ? patched(block, fieldsOfRoles(before, had)) : block)),
    ),
  )
}

/** Inside a song, off the end of its phrases. */
function offPhrase(facts: Facts, before: PlayedBlock, now: PlayedBlock, had: Roles, has: Roles): Noticed | undefined {
  const { alignment, section } = now
  if (!alignment || alignment.grade === 'phrase' || before.section !== section) return undefined
  const off = Math.abs(alignment.fromPhrase.counts)
  const way = alignment.fromPhrase.counts > 0 ? 'after' : 'before'
  return {
    rule: 'handOverOffPhrase',
    severity: 'hint',
    text: `${takesOver(facts, had, has)} at ${quoted(facts, now.index)}, ${formatEights(off, facts.sections[section]!.unit.eight)} ${way} the end of a phrase.`,
    why: COMMON_PRACTICE,
    amount: off,
  }
}

/** "Remy takes over", "Remy takes the microphone". */
function takesOver({ ride }: Facts, had: Roles, has: Roles): string {
  if (had.leads !== has.leads) return `${saidName(ride, has.leads)} takes over`
  return `${saidName(ride, has.speaks)} takes the microphone`
}
