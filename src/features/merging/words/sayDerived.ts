import type { DerivedChange, Figure } from '#engine/changes/derivedChanges.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { formatSetting } from '#units/formatSetting.ts'

/** What follows from other changes, as a line: what of, before and after. */
interface DerivedWords {
  what: string
  before?: string
  after?: string
}

const FIGURES: Record<Figure, string> = {
  total: 'the ride lasts',
  slack: 'time to spare',
  workSeconds: 'work',
  easySeconds: 'easy time',
  meanEffort: 'mean effort',
  sessionLoad: 'load',
  longestStanding: 'longest standing',
  highestTotal: 'highest resistance',
}

/** What is said of the whole ride. Undefined where it is rounded to the same. */
export function sayFigure(change: Extract<DerivedChange, { kind: 'figure' }>): DerivedWords | undefined {
  const { figure, before, after } = change
  const say = (value: number) => {
    if (change.figure === 'highestTotal') return formatSetting(value, change.perUnit)
    return figure === 'meanEffort' || figure === 'sessionLoad' ? formatNumber(value, figure === 'meanEffort' ? 1 : 0) : formatClock(value)
  }
  const words = { what: FIGURES[figure], before: say(before), after: say(after) }
  return words.before === words.after ? undefined : words
}

/** What is said of a block or a section. */
export function sayDerived(change: Exclude<DerivedChange, { kind: 'figure' }>): DerivedWords {
  switch (change.kind) {
    case 'start':
      return { what: shift(change.after - change.before), before: formatClock(change.before), after: formatClock(change.after) }
    case 'call':
      return { what: 'call', before: change.before, after: change.after }
    case 'total':
      return { what: 'resistance', before: change.before, after: change.after }
    case 'foot':
      return { what: 'foot on the one', before: change.before ?? 'none', after: change.after ?? 'none' }
    case 'foundNow':
      return { what: `New finding: ${change.text}` }
    case 'foundNoMore':
      return { what: `No longer found: ${change.text}` }
  }
}

const shift = (seconds: number): string => `starts ${formatDuration(Math.abs(seconds))} ${seconds > 0 ? 'later' : 'earlier'}`
