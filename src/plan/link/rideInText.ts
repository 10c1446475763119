import { type Problem, parseRide } from '#plan/document/parseRide.ts'
import type { Ride } from '#plan/model.ts'
import { say } from '#words/said.ts'
import { open } from './envelope.ts'
import { unpack } from './format1/pack.ts'
import type { LinkFault, Missing } from './linkFault.ts'

/** The ride of a link, or what is wrong: with the link, or with the ride in it. */
export type RideInText =
  | { ok: true; ride: Ride; link: string; others: number }
  | { ok: false; fault: LinkFault | 'ride'; problems: Problem[] }

/**
 * Reads the ride out of the first whole link in a text.
 *
 * @param text a whole address, "#…", the bare fragment, or a message with one of them in it, also as mail and chat leave it
 * @returns the ride with the link as it was made (`#` and this is its fragment) and the number of other links beside it, or
 *   the problem as a text: no link of ours, too new, cut off, its letters' case changed, damaged, too large, or what
 *   `parseRide` has against its content. Never throws, never unpacks more than 8 MB.
 */
export function rideInText(text: string): RideInText {
  if (typeof text !== 'string') return refused('notOurs')
  const opened = open(text)
  if (!opened.ok) return refused(opened.fault, opened)
  const unpacked = unpack(opened.payload)
  if (!unpacked.ok) return refused(unpacked.fault)
  const parsed = parseRide(unpacked.document)
  return parsed.ok ? { ...parsed, link: opened.link, others: opened.others } : { ...parsed, fault: 'ride' }
}

function refused(fault: LinkFault, { missing, of }: Missing = {}): RideInText {
  const isCounted = fault === 'truncated' && missing !== undefined && of !== undefined
  const text = isCounted ? say('links.truncatedBy', { missing, of }) : say(`links.${fault}`)
  return { ok: false, fault, problems: [{ path: '', text }] }
}
