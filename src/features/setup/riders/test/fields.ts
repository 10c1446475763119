import { parseClock } from '#units/parseClock.ts'
import { type Parsed, refused } from '#units/parsed.ts'
import { parseNumber } from '#units/parseNumber.ts'
import type { Seconds, Watts } from '#units/units.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

/** The bounds of a field; what no good trial has is doubted, not refused. */
const SHORTEST: Seconds = 30
const LONGEST: Seconds = 3_600

/** How long a trial was held. */
export function parseLength(text: string): Parsed<Seconds, Refusal> {
  const length = parseClock(text)
  if (!length.ok) return length
  return length.value < SHORTEST || length.value > LONGEST
    ? refused(words.riders.trialLength({ shortest: SHORTEST, longest: LONGEST }))
    : length
}

const WATTS = { min: 30, max: 1_500, decimals: 1, suffixes: ['watts', 'watt', 'w'] }

export const parseTrialWatts = (text: string): Parsed<Watts> => parseNumber(text, { of: 'meanPower', ...WATTS })
export const parseEndWatts = (text: string): Parsed<Watts> => parseNumber(text, { of: 'endPower', ...WATTS })

export const parsePeak = (text: string): Parsed<Seconds> => parseNumber(text, { of: 'peakSecond', min: 0, max: 180, suffixes: ['s'] })
