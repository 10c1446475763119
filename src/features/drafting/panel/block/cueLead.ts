import { startLead, startsWithBlock } from '#plan/cueStart.ts'
import type { Cue } from '#plan/model.ts'
import { parseDecimal } from '#units/parseDecimal.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

type Lead = Cue['lead']

/** Longest lead of a cue: a minute and a half, or as many counts at a quick tempo. */
const LONGEST = { counts: 256, seconds: 90 } as const

/** "8 counts", "1 count", "3 s"; "as it begins" for words inside a block that start with it. */
export function formatCueLead(lead: Lead): string {
  if (startsWithBlock(lead)) return words.panelsBlock.asItBegins
  if ('seconds' in lead) return words.panelsBlock.leadSeconds(lead)
  return words.panelsBlock.leadCounts(lead)
}

/**
 * How long before its change a cue ends: "8", "8 counts", "2 eights", "3 s". A bare number is in `unit`. Words inside a block
 * may also begin with it: "as it begins", "start".
 */
export function parseCueLead(text: string, unit: 'counts' | 'seconds', inside: boolean): Parsed<Lead, Refusal> {
  if (
    inside &&
    /^(?:(?:at|as|from) (?:it |the )?)?(?:start|begins?|beginning|top)s?$|^(?:(?:am|vom|zu|mit) )?(?:anfang|beginn)$/i.test(text.trim())
  )
    return parsed(startLead(unit))
  const match =
    /^([\d.,]+)\s*(c|counts?|beats?|zählzeit(?:en)?|e|eights?|achter|s|secs?|seconds?|sek|sekunden?)?(?:\s+(?:before|davor))?$/i.exec(
      text.trim(),
    )
  const value = match ? parseDecimal(match[1]!) : null
  if (!match || value === null) {
    return refused(inside ? words.panelsBlock.leadFormInside : words.panelsBlock.leadForm)
  }
  const word = match[2]?.toLowerCase()
  const inSeconds = word === undefined ? unit === 'seconds' : word.startsWith('s')
  if (inSeconds)
    return value <= LONGEST.seconds ? parsed({ seconds: value }) : refused(words.panelsBlock.leadSecondsMost({ most: LONGEST.seconds }))
  const counts = /^[ea]/.test(word ?? '') ? value * 8 : value
  if (!Number.isInteger(counts)) return refused(words.panelsBlock.leadCountsWhole)
  return counts <= LONGEST.counts ? parsed({ counts }) : refused(words.panelsBlock.leadCountsMost({ most: LONGEST.counts }))
}

/**
 * A count (an eight with Shift) or a second (five) more or less, never under none. Words inside a block that would begin
 * before it begin with it.
 *
 * @param begins the lead that words inside a block have when they begin with it
 */
export function stepCueLead(lead: Lead, direction: 1 | -1, large: boolean, begins?: number): Lead {
  const inSeconds = 'seconds' in lead
  const now = startsWithBlock(lead) ? (begins ?? 0) : inSeconds ? lead.seconds : lead.counts
  const next = now + direction * (large ? (inSeconds ? 5 : 8) : 1)
  if (begins !== undefined && next >= begins) return startLead(inSeconds ? 'seconds' : 'counts')
  const amount = Math.min(inSeconds ? LONGEST.seconds : LONGEST.counts, Math.max(0, next))
  return inSeconds ? { seconds: amount } : { counts: amount }
}
