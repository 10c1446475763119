import { DEFAULT_LEADER } from '#plan/defaults.ts'
import type { Ride } from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import { isolated } from '#units/isolated.ts'

/** The names of those who lead, as a sheet says them; nothing while nobody has given a name. */
export function leadersOf({ leaders }: Pick<Ride, 'leaders'>): string | undefined {
  const names = leaders.map(({ name }) => name.trim()).filter((name) => name !== '' && name !== DEFAULT_LEADER.name)
  return names.length === 0 ? undefined : joinWords(names.map(isolated))
}
