import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, fix, ofRide, quoted } from '#engine/findings/finding.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import { rolesOf } from '#plan/rolesOf.ts'
import { say } from '#words/said.ts'
import { saidName, sameRoles } from './saidName.ts'

/** Two leaders of whom one has nothing to do, and stretches that one leads while the other speaks. */
export function sharedLead(facts: Facts): Finding[] {
  if (facts.ride.leaders.length < 2) return []
  return [...withoutPart(facts), ...leadAndVoiceApart(facts)]
}

function withoutPart({ ride, blocks }: Facts): Finding[] {
  if (blocks.length === 0) return []
  const busy = new Set(blocks.flatMap(({ block }) => Object.values(rolesOf(ride, block))))
  const idle = ride.leaders.filter(({ id }) => !busy.has(id))
  return idle.map(({ id }) => {
    const name = saidName(ride, id)
    const rest = ride.leaders.filter((leader) => leader.id !== id)
    const teach = fix(say('checksRide.teachWithout', { name }), say('checksRide.taughtWithout', { name }), (before) =>
      patchRide({ leaders: rest }).apply(before),
    )
    return ofRide({
      rule: 'leaderWithoutBlock',
      severity: 'hint',
      text: say('checksRide.leaderWithoutBlock', { name }),
      why: COMMON_PRACTICE,
      fixes: [teach],
    })
  })
}

/** Hard work that one leads and another calls: riders look at one and hear the other. */
function leadAndVoiceApart(facts: Facts): Finding[] {
  const { ride, rules } = facts
  const apart = facts.blocks.filter(({ block, from, to }) => {
    const { leads, speaks } = rolesOf(ride, block)
    return to > from && leads !== speaks && Math.max(block.effort.from, block.effort.to) >= rules.workEffort
  })
  return apart.filter((played, i) => !follows(facts, played, apart[i - 1])).map((first) => tell(facts, first, runFrom(facts, apart, first)))
}

/** True where a block carries on what the one before it does. */
const follows = ({ ride }: Facts, played: PlayedBlock, before: PlayedBlock | undefined): boolean =>
  before?.index === played.index - 1 && sameRoles(rolesOf(ride, before.block), rolesOf(ride, played.block))

function runFrom(facts: Facts, apart: readonly PlayedBlock[], first: PlayedBlock): PlayedBlock[] {
  const run = [first]
  for (const played of apart) if (follows(facts, played, run.at(-1))) run.push(played)
  return run
}

function tell(facts: Facts, first: PlayedBlock, run: readonly PlayedBlock[]): Finding {
  const { ride } = facts
  const { leads, speaks } = rolesOf(ride, first.block)
  const [leader, speaker] = [saidName(ride, leads), saidName(ride, speaks)]
  const ids = new Set(run.map(({ block }) => block.id))
  return atBlock(facts, first.index, {
    rule: 'leadAndVoiceApart',
    severity: 'hint',
    text: say('checksRide.leadAndVoiceApart', {
      leads: leader,
      speaks: speaker,
      block: quoted(facts, first.index),
      others: run.length - 1,
    }),
    why: COMMON_PRACTICE,
    fixes: [
      fix(say('checksRide.giveMic', { name: leader }), say('checksRide.gaveMic', { name: leader }), (before) =>
        editSections(before, (section) =>
          editBlocksOf(section, (block) => (ids.has(block.id) ? patched(block, { mic: undefined }) : block)),
        ),
      ),
    ],
  })
}
