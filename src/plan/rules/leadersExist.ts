import { eachBlock, type Rule } from './rule.ts'

/** Whoever leads or speaks in a block is one of the ride's leaders. */
export const leadersExist: Rule = (ride) => {
  const known = new Set(ride.leaders.map((leader) => leader.id))
  return [...eachBlock(ride)].flatMap(({ block, path }) =>
    (['leader', 'mic'] as const).flatMap((role) => {
      const id = block[role]
      return id === undefined || known.has(id) ? [] : [{ path: [...path, role], wrong: { problem: 'noSuchLeader', id } }]
    }),
  )
}
