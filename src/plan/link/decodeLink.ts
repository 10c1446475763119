import { inflateSync, strFromU8 } from 'fflate'
import { ABOUT_LINK } from '#plan/messages.ts'
import { type ParsedRide, parseRide } from '#plan/parseRide.ts'
import { type LinkFault, open } from './envelope.ts'

/** Most bytes a link may unpack to; checked before any are made. */
const MAX_UNPACKED = 8_000_000

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
  try {
    const out = inflateSync(opened.payload, { out: new Uint8Array(MAX_UNPACKED + 1) })
    return out.length > MAX_UNPACKED ? refused('tooLarge') : parseRide(JSON.parse(strFromU8(out)))
  } catch {
    return refused('damaged')
  }
}

const refused = (fault: LinkFault): ParsedRide => ({ ok: false, problems: [{ path: '', sentence: ABOUT_LINK[fault] }] })
