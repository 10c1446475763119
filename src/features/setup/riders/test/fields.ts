import { formatClock } from '#units/formatClock.ts'
import { parseClock } from '#units/parseClock.ts'
import { type Parsed, refused } from '#units/parsed.ts'
import { parseNumber } from '#units/parseNumber.ts'
import type { Seconds, Watts } from '#units/units.ts'

/** The bounds of a field; what no good trial has is doubted, not refused. */
const SHORTEST: Seconds = 30
const LONGEST: Seconds = 3_600

/** How long a trial was held. */
export function parseLength(text: string): Parsed<Seconds> {
  const length = parseClock(text)
  if (!length.ok) return length
  return length.value < SHORTEST || length.value > LONGEST
    ? refused(`A trial lasts from ${formatClock(SHORTEST)} to ${formatClock(LONGEST)}; write minutes and seconds, such as 3:00.`)
    : length
}

const watts = (subject: string, example: string) => (text: string) =>
  parseNumber(text, { subject, min: 30, max: 1_500, decimals: 1, unit: 'watts', suffixes: ['watts', 'w'], example })

export const parseTrialWatts: (text: string) => Parsed<Watts> = watts('Mean power', '260')
export const parseEndWatts: (text: string) => Parsed<Watts> = watts('The end', '210')

export const parsePeak = (text: string): Parsed<Seconds> =>
  parseNumber(text, { subject: 'The second of the peak', min: 0, max: 180, unit: 'seconds', suffixes: ['s'], example: '6' })
