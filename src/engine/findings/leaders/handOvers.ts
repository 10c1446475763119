import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, fix, type Noticed, quoted } from '#engine/findings/finding.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import { quotedItem } from '#plan/names.ts'
import { fieldsOfRoles, type Roles, rolesOf } from '#plan/rolesOf.ts'
import { say } from '#words/said.ts'
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
    text: say('checksRide.handOverInPush', { ...takesOver(facts, had, has), block: quoted(facts, now.index) }),
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
  const there = { block: quotedItem(ridden[end]!.block) }
  return fix(say('checksRide.moveHandOver', there), say('checksRide.movedHandOver', there), (before) =>
    editSections(before, (section) =>
      editBlocksOf(section, (block) => (ids.has(block.id) ? patched(block, fieldsOfRoles(before, had)) : block)),
    ),
  )
}

/** Inside a song, off the end of its phrases. */
function offPhrase(facts: Facts, before: PlayedBlock, now: PlayedBlock, had: Roles, has: Roles): Noticed | undefined {
  const { alignment, section } = now
  if (!alignment || alignment.grade === 'phrase' || before.section !== section) return undefined
  const { counts } = alignment.fromPhrase
  const off = Math.abs(counts)
  return {
    rule: 'handOverOffPhrase',
    severity: 'hint',
    text: say('checksRide.handOverOffPhrase', {
      ...takesOver(facts, had, has),
      block: quoted(facts, now.index),
      counts: off,
      unit: facts.sections[section]!.unit.eight,
      after: counts > 0,
    }),
    why: COMMON_PRACTICE,
    amount: off,
  }
}

/** Who takes over, or takes the microphone alone. */
function takesOver({ ride }: Facts, had: Roles, has: Roles): { name: string; voice: boolean } {
  const voice = had.leads === has.leads
  return { name: saidName(ride, voice ? has.speaks : has.leads), voice }
}
