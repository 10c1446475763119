import type { Cue } from './model.ts'

/** The longest lead a cue can have. */
export const LONGEST_LEAD = { counts: 1_000, seconds: 600 } as const

/**
 * The lead of words inside a block that begin as the block does, after its change, however long it is or becomes: the
 * longest there is, which no block has.
 */
export const startLead = (unit: 'counts' | 'seconds'): Cue['lead'] =>
  unit === 'counts' ? { counts: LONGEST_LEAD.counts } : { seconds: LONGEST_LEAD.seconds }

/** Whether words inside a block begin as the block does. */
export const startsWithBlock = (lead: Cue['lead']): boolean =>
  'counts' in lead ? lead.counts >= LONGEST_LEAD.counts : lead.seconds >= LONGEST_LEAD.seconds

/** True for words that are said in their block; every other cue leads up to one. */
export const isInside = ({ moment }: Pick<Cue, 'moment'>): boolean => moment === 'form' || moment === 'story'
