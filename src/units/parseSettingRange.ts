import type { StepRange } from '#units/units.ts'
import { type Parsed, parsed, refused } from './parsed.ts'
import { type KnobScale, parseSetting, readSetting } from './parseSetting.ts'

/**
 * A setting or a range of settings as whole knob steps, low end first: "5–6", "5-6", "5 to 6",
 * "1½–2", "−½ to ½", "to 3–4"; one value stands for both ends. "3+", "3 or more" and "at least 3" have
 * no upper end. "1-1/2" is one and a half, as it is written by hand, because a range from 1 down to ½
 * would be no range.
 */
export function parseSettingRange(text: string, scale: KnobScale): Parsed<StepRange> {
  const stated = text.trim().replace(/^(?:to|auf)\s+/i, '')
  const open = withoutOrMore(stated)
  const range = parseClosed(open ?? stated, scale)
  if (open === null || !range.ok) return range
  const { from, to } = range.value
  return from === to ? parsed({ from, to, orMore: true }) : refused({ kind: 'openRange' })
}

/** What is left of "3+", "3 or more", "3 turns or more" or "at least 3"; null where the text says nothing of the kind. */
function withoutOrMore(text: string): string | null {
  const least = /^(?:at\s+least|mindestens)\s+(.*)$/i.exec(text)
  const more = /^(.*?)\s*(?:\+|\b(?:or\s+more|oder\s+mehr)\b)\s*(\p{L}*)$/iu.exec(least ? least[1]! : text)
  return more ? `${more[1]} ${more[2]}` : (least?.[1] ?? null)
}

function parseClosed(text: string, scale: KnobScale): Parsed<StepRange> {
  if (readSetting(text, scale.unit) !== null || !isRange(text)) {
    const one = parseSetting(text, scale)
    return one.ok ? parsed({ from: one.value, to: one.value }) : one
  }
  const [low, high] = splitRange(text)
  const from = parseSetting(low, scale)
  if (!from.ok) return from
  const to = parseSetting(high, scale)
  if (!to.ok) return to
  return from.value > to.value ? refused({ kind: 'highEndFirst' }) : parsed({ from: from.value, to: to.value })
}

/** Where two settings part: "to", "..", or a dash that has something before it. */
const PARTING = /\s*(?:\b(?:to|bis)\b|\.{2,3}|…|(?<=[^\s+\-−–])\s*[-–—−])\s*/

const isRange = (text: string): boolean => PARTING.test(text.trim())

function splitRange(text: string): [string, string] {
  const trimmed = text.trim()
  const match = PARTING.exec(trimmed)!
  return [trimmed.slice(0, match.index), trimmed.slice(match.index + match[0].length)]
}
