import type { Ride } from '#plan/model.ts'
import type { Roles } from '#plan/rolesOf.ts'
import { isolated } from '#units/isolated.ts'
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
  const name = (id: string) => (id === reader ? 'you' : isolated(initialsOf(leaders.find((leader) => leader.id === id)?.name ?? '')))
  if (leadStays) return `microphone to ${name(now.speaks)}`
  if (now.leads === now.speaks)
    return before
      ? `over to ${name(now.leads)}`
      : `${name(now.leads)} ${verb(now.leads, reader, 'lead')} and ${verb(now.leads, reader, 'speak')}`
  const microphone =
    micStays && before ? `${name(now.speaks)} ${verb(now.speaks, reader, 'keep')} the microphone` : `microphone to ${name(now.speaks)}`
  return `${before ? `over to ${name(now.leads)}` : `${name(now.leads)} ${verb(now.leads, reader, 'lead')}`}, ${microphone}`
}

const verb = (id: string, reader: string | undefined, word: string): string => (id === reader ? word : `${word}s`)
