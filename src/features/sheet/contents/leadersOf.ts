import { DEFAULT_LEADER } from '#plan/defaults.ts'
import type { Ride } from '#plan/model.ts'
import { isolated } from '#units/isolated.ts'
import { and } from '#words/forms.ts'

/** The names of those who lead, as a sheet says them; nothing while nobody has given a name. */
export function leadersOf({ leaders }: Pick<Ride, 'leaders'>): string | undefined {
  const names = leaders.map(({ name }) => name.trim()).filter((name) => name !== '' && name !== DEFAULT_LEADER.name)
  return names.length === 0 ? undefined : and(names.map(isolated))
}
