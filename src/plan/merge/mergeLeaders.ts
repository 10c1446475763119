import { sameValue } from '#plan/edits.ts'
import type { Leader, Ride } from '#plan/model.ts'
import { eachBlock } from '#plan/rules/rule.ts'
import type { Decisions } from './decisions.ts'
import { otherSide, type Side } from './difference.ts'
import { mergeFields } from './mergeFields.ts'
import type { Three } from './onOneScale.ts'
import { prefixed, type Spread, within } from './spread.ts'
import { originOf } from './threeWay.ts'

const LEADER = 'leader.'

/**
 * The leaders of the merged ride. Who they are and in which order is one value, since there
 * are at most two and the first leads where nobody is named; what is said of each is decided
 * field by field. Taking one out is a conflict where the other side changed or named them since.
 */
export function mergeLeaders(three: Three, decisions: Decisions): Leader[] {
  const { base, mine, theirs } = three
  const side = whose(three, decisions)
  const one = (ride: Ride | null, id: string): Spread | undefined => {
    const found = ride?.leaders.find((leader) => leader.id === id)
    return found && prefixed(LEADER, found)
  }
  return (side === 'mine' ? mine : theirs).leaders.map((leader) => {
    const [ours, others] = [one(mine, leader.id), one(theirs, leader.id)]
    if (!ours || !others) return leader
    const where = { id: `leader ${leader.id}`, of: 'ride' as const, place: {} }
    const merged = mergeFields({ base: one(base, leader.id), mine: ours, theirs: others }, where, decisions)
    return within(LEADER, merged) as unknown as Leader
  })
}

function whose({ base, mine, theirs }: Three, decisions: Decisions): Side {
  const ids = (ride: Ride | null) => ride?.leaders.map(({ id }) => id)
  const by = originOf(ids(base), ids(mine), ids(theirs))
  if (by === 'none') return 'mine'
  const difference = {
    kind: 'field' as const,
    of: 'ride' as const,
    id: 'ride leaders',
    place: {},
    field: 'leaders',
    base: base?.leaders,
    mine: mine.leaders,
    theirs: theirs.leaders,
  }
  if (by === 'both') {
    decisions.note({ ...difference, by })
    return 'mine'
  }
  const needed = by !== 'conflict' && base ? misses(base, by === 'mine' ? mine : theirs, by === 'mine' ? theirs : mine) : false
  if (!needed || by === 'conflict') return decisions.decide({ ...difference, by })
  return decisions.decide({ ...difference, by: 'conflict' }, otherSide(by))
}

/** Whether a side took out a leader whom the other one changed, or named in a block, since the base. */
function misses(base: Ride, without: Ride, having: Ride): boolean {
  const gone = having.leaders.filter(({ id }) => !without.leaders.some((leader) => leader.id === id))
  return gone.some(
    (leader) =>
      !sameValue(
        base.leaders.find(({ id }) => id === leader.id),
        leader,
      ) || namedAnew(base, having, leader.id),
  )
}

function namedAnew(base: Ride, ride: Ride, leaderId: string): boolean {
  const before = namings(base, leaderId)
  return [...namings(ride, leaderId)].some((naming) => !before.has(naming))
}

/** Every block that names a leader, with what for. */
function namings(ride: Ride, leaderId: string): Set<string> {
  const roles = ['leader', 'mic'] as const
  return new Set(
    [...eachBlock(ride)].flatMap(({ block }) => roles.filter((role) => block[role] === leaderId).map((role) => `${block.id} ${role}`)),
  )
}
