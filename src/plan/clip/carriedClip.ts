import { strFromU8, strToU8 } from 'fflate'
import * as v from 'valibot'
import { jsonOf } from '#plan/document/jsonOf.ts'
import { type Problem, parseRide } from '#plan/document/parseRide.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { fromBase64url, toBase64url } from '#plan/link/base64url.ts'
import { say } from '#words/said.ts'
import type { Clip } from './clip.ts'

/** The form this build writes. */
const CURRENT_CLIP = 1

/**
 * What was copied rides along in an attribute of the copied HTML: the one form besides plain text that every browser hands
 * from window to window, by its own copy keys and by a button alike, and that other programs show as the lines inside it.
 */
const ATTRIBUTE = 'data-ridewright'

/** Most letters of HTML that are looked through: above the largest ride in this writing. */
const LONGEST = 4_000_000

const CARRIED = new RegExp(`${ATTRIBUTE}="([A-Za-z0-9_-]+)"`)

const envelope = v.object({
  clip: v.pipe(v.number(), v.integer()),
  kind: v.picklist(['items', 'sections', 'cues']),
  from: v.pipe(v.number(), v.integer(), v.minValue(-LIMITS.steps), v.maxValue(LIMITS.steps)),
  ride: v.unknown(),
})

/** What was read, what is wrong with it, or null where nothing of ours is in it. */
type ReadClip = { ok: true; clip: Clip } | { ok: false; problems: Problem[] } | null

/** HTML that shows lines of text and carries what was copied. */
export function carryClip({ kind, from, ride }: Clip, lines: string): string {
  const carried = toBase64url(strToU8(JSON.stringify({ clip: CURRENT_CLIP, kind, from, ride })))
  const shown = lines.split('\n').map((line) => `<p>${escaped(line)}</p>`)
  return `<div ${ATTRIBUTE}="${carried}">${shown.join('')}</div>`
}

/** Reads what HTML from the clipboard carries, whoever put it there. Never throws. */
export function readClip(html: string): ReadClip {
  if (html.length > LONGEST) return null
  const bytes = fromBase64url(CARRIED.exec(html)?.[1] ?? '*')
  if (!bytes) return null
  const read = v.safeParse(envelope, jsonOf(strFromU8(bytes)))
  if (!read.success) return null
  const { clip, kind, from, ride } = read.output
  if (clip > CURRENT_CLIP) return { ok: false, problems: [{ path: '', text: say('clipboard.tooNew') }] }
  const parsed = parseRide(ride)
  if (!parsed.ok) return parsed
  return parsed.ride.sections.length === 0 ? null : { ok: true, clip: { kind, from, ride: parsed.ride } }
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ENTITIES[sign]!)
