import { ABOUT_LINK } from '#plan/messages.ts'
import { type ParsedRide, parseRide } from '#plan/parseRide.ts'
import { type LinkFault, open } from './envelope.ts'
import { unpack } from './format1/pack.ts'

/**
 * Reads the ride out of a link.
 *
 * @param text a whole address, "#…" or the bare fragment; white space in or around it is ignored
 * @returns the ride, or the problem in words: not a link of ours, too new, cut off, damaged,
 *   too large, or what `parseRide` has against its content. Never throws, never unpacks more
 *   than 8 MB.
 */
export function decodeLink(text: string): ParsedRide {
  if (typeof text !== 'string') return refused('notOurs')
  const opened = open(text)
  if (!opened.ok) return refused(opened.fault)
  const unpacked = unpack(opened.payload)
  return unpacked.ok ? parseRide(unpacked.document) : refused(unpacked.fault)
}

const refused = (fault: LinkFault): ParsedRide => ({ ok: false, problems: [{ path: '', sentence: ABOUT_LINK[fault] }] })
