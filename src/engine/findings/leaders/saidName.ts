import type { Ride } from '#plan/model.ts'
import type { Roles } from '#plan/rolesOf.ts'

/** A leader's first name, as colleagues say it; the whole where two share it. */
export function saidName({ leaders }: Pick<Ride, 'leaders'>, id: string): string {
  const firstOf = (name: string) => name.trim().split(/\s+/)[0] ?? ''
  const name = leaders.find((leader) => leader.id === id)?.name ?? ''
  const first = firstOf(name)
  return leaders.filter((leader) => firstOf(leader.name) === first).length > 1 ? name : first || name
}

export const sameRoles = (a: Roles, b: Roles): boolean => a.leads === b.leads && a.speaks === b.speaks
