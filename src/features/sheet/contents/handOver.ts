import type { Ride } from '#plan/model.ts'
import type { Roles } from '#plan/rolesOf.ts'
import { isolated } from '#units/isolated.ts'
import { words } from '#words/words.ts'
import { initialsOf } from './initialsOf.ts'

/** How a sheet says who leads: not at all, once for one leader, or wherever it changes and at the head of every song. */
export type LeadHands = 'unsaid' | 'one' | 'change'

/**
 * What is said where the lead or the microphone changes hands as a block begins: "over to you",
 * "microphone to RC". Nothing where both stay, or where one leader teaches alone.
 *
 * @param before the roles so far; absent at the start of the class
 * @param reader whose sheet it is; absent on a sheet for both
 */
export function handOverOf(
  { leaders }: Pick<Ride, 'leaders'>,
  now: Roles,
  before: Roles | undefined,
  reader: string | undefined,
): string | undefined {
  if (leaders.length < 2) return undefined
  const leadStays = before?.leads === now.leads
  const micStays = before?.speaks === now.speaks
  if (leadStays && micStays) return undefined
  const named = (id: string) => ({
    name: id === reader ? undefined : isolated(initialsOf(leaders.find((leader) => leader.id === id)?.name ?? '')),
  })
  const [leads, speaks] = [named(now.leads), named(now.speaks)]
  const { overTo, micTo, keepsMic, leadsAndSpeaks, leads: leadsNow } = words.printed
  if (leadStays) return micTo(speaks)
  if (now.leads === now.speaks) return before ? overTo(leads) : leadsAndSpeaks(leads)
  return `${before ? overTo(leads) : leadsNow(leads)}, ${micStays && before ? keepsMic(speaks) : micTo(speaks)}`
}
