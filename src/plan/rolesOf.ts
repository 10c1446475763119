import type { Block, Ride } from './model.ts'

/** Who leads a block and who has the microphone, by leader id. */
export interface Roles {
  leads: string
  speaks: string
}

/** A block's own leader and speaker; the first leader, and whoever leads, unless given. */
export function rolesOf({ leaders }: Pick<Ride, 'leaders'>, { leader, mic }: Pick<Block, 'leader' | 'mic'>): Roles {
  const leads = leader ?? leaders[0]!.id
  return { leads, speaks: mic ?? leads }
}

/** The fields that give a block such roles: none where they go without saying. */
export function fieldsOfRoles({ leaders }: Pick<Ride, 'leaders'>, { leads, speaks }: Roles): Pick<Block, 'leader' | 'mic'> {
  return { leader: leads === leaders[0]!.id ? undefined : leads, mic: speaks === leads ? undefined : speaks } as Pick<
    Block,
    'leader' | 'mic'
  >
}
