import { memo } from 'react'
import { QuantityRow, type QuantityRowProps } from '#features/drafting/panel/rows/QuantityRow.tsx'
import type { Length } from '#plan/model.ts'
import { formatEightsInput } from '#units/formatEights.ts'
import { parseClock } from '#units/parseClock.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { parseEights } from '#units/parseEights.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { clock, number } from '#words/forms.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'

interface LengthRowProps {
  length: Length
  /** Counts in the unit people count by here: eight, or six in three and six. */
  eight: Counts
  onChange: (length: Length) => void
}

/** A class is shorter than this; a longer block is a slip of the finger. */
const LONGEST: Seconds = 3 * 3600
const MOST_COUNTS: Counts = 4000

/** The length in eights and counts under a song, in minutes and seconds without one. */
export const LengthRow = memo(function LengthRow({ length, eight, onChange }: LengthRowProps) {
  if ('counts' in length) {
    return (
      <QuantityRow
        label={words.panels.length}
        value={length.counts}
        unit={words.panels.groups({ six: eight === 6 })}
        {...countsRow(eight)}
        onChange={(counts) => onChange({ counts })}
      />
    )
  }
  return <QuantityRow label={words.panels.length} value={length.seconds} {...secondsRow} onChange={(seconds) => onChange({ seconds })} />
})

type Written<T> = Required<Pick<QuantityRowProps<T>, 'format' | 'parse' | 'step'>>

/** How a length in counts is written, read and stepped. */
export const countsRow = (eight: Counts): Written<Counts> => ({
  format: (counts) => formatEightsInput(counts, eight),
  parse: (text) => parseCounts(text, eight),
  step: (counts, direction, large) => stepCounts(counts, direction, large ? 1 : eight),
})

/** How a length by the clock is. */
export const secondsRow: Written<Seconds> = {
  format: (seconds) => formatSeconds(seconds),
  parse: (text) => parseSeconds(text),
  step: (seconds, direction, large) => Math.min(LONGEST, Math.max(1, Math.round(seconds) + direction * (large ? 30 : 5))),
}

function parseCounts(text: string, eight: Counts): Parsed<Counts, Refusal> {
  const counts = parseEights(text, eight)
  return counts.ok && counts.value > MOST_COUNTS ? refused(words.panelsBlock.mostCounts({ most: MOST_COUNTS })) : counts
}

/** One unit more or less, landing on whole units; never under one step. */
function stepCounts(counts: Counts, direction: 1 | -1, by: Counts): Counts {
  const next = direction > 0 ? Math.floor(counts / by + 1) * by : Math.ceil(counts / by - 1) * by
  return Math.min(MOST_COUNTS, Math.max(by, next))
}

/** Whole seconds as a clock; a length with a fraction is written out, so that reading it back changes nothing. */
const formatSeconds = (seconds: Seconds): string => (Number.isInteger(seconds) ? clock(seconds) : `${number(seconds, 3)} s`)

function parseSeconds(text: string): Parsed<Seconds, Refusal> {
  const seconds = parseClock(text)
  if (!seconds.ok) return seconds
  if (seconds.value < 1) return refused(words.panelsBlock.leastSecond)
  return seconds.value > LONGEST ? refused(words.panelsBlock.mostHours) : parsed(Math.round(seconds.value))
}
