import type { Cue } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { parseDecimal } from '#units/parseDecimal.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'

type Lead = Cue['lead']

/** Longest lead of a cue: a minute and a half, or as many counts at a quick tempo. */
const LONGEST = { counts: 256, seconds: 90 } as const

/** "8 counts", "1 count", "3 s". */
export function formatCueLead(lead: Lead): string {
  if ('seconds' in lead) return `${formatNumber(lead.seconds, 1)} s`
  return `${lead.counts} ${lead.counts === 1 ? 'count' : 'counts'}`
}

/** How long before its change a cue ends: "8", "8 counts", "2 eights", "3 s". A bare number is in `unit`. */
export function parseCueLead(text: string, unit: 'counts' | 'seconds'): Parsed<Lead> {
  const match = /^([\d.,]+)\s*(c|counts?|beats?|e|eights?|s|secs?|seconds?)?(?:\s+before)?$/i.exec(text.trim())
  const value = match ? parseDecimal(match[1]!) : null
  if (!match || value === null) return refused('Write counts, such as 8, or seconds, such as 3 s.')
  const word = match[2]?.toLowerCase()
  const inSeconds = word === undefined ? unit === 'seconds' : word.startsWith('s')
  if (inSeconds)
    return value <= LONGEST.seconds ? parsed({ seconds: value }) : refused(`At most ${LONGEST.seconds} seconds before the change.`)
  const counts = word?.startsWith('e') ? value * 8 : value
  if (!Number.isInteger(counts)) return refused('Counts before the change are whole.')
  return counts <= LONGEST.counts ? parsed({ counts }) : refused(`At most ${LONGEST.counts} counts before the change.`)
}

/** A count (an eight with Shift) or a second (five) more or less, never under none. */
export function stepCueLead(lead: Lead, direction: 1 | -1, large: boolean): Lead {
  if ('seconds' in lead) return { seconds: Math.min(LONGEST.seconds, Math.max(0, lead.seconds + direction * (large ? 5 : 1))) }
  return { counts: Math.min(LONGEST.counts, Math.max(0, lead.counts + direction * (large ? 8 : 1))) }
}
