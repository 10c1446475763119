import { type PlainStretch, withoutMusic } from '#engine/prepare/withoutMusic.ts'
import type { RideReport } from '#engine/report.ts'
import { asidesOf } from '#features/sheet/contents/asidesOf.ts'
import type { Aside } from '#features/sheet/contents/contents.ts'
import { leadersOf } from '#features/sheet/contents/leadersOf.ts'
import { stampOf } from '#features/sheet/contents/stampOf.ts'
import type { Ride } from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEffort } from '#units/formatEffort.ts'
import { wallClockAfter } from '#units/wallClockAfter.ts'
import { words } from '#words/words.ts'

/** The class when nothing plays: at most ten lines of minutes and efforts. */
export interface PlainContents {
  title: string
  facts: string[]
  stamp: string
  opening?: Aside
  lines: PlainLine[]
  closing?: Aside
}

interface PlainLine {
  id: string
  /** Time since the class began, by the minute. */
  from: string
  to: string
  /** The time of day it starts, where the ride says when it does. */
  clock?: string
  /** Effort as it is read at a glance: "3", "4 to 6", "9 and 3". */
  level: string
  effort: { from: number; to: number }
  /** How it is ridden, in words. */
  words: string
}

/** Pure; the report must be the ride's own. */
export function plainContents(ride: Ride, report: RideReport, date: string): PlainContents {
  return {
    title: ride.title || 'untitled ride',
    facts: [
      `${ride.slotMinutes} min${ride.startsAt ? ` from ${ride.startsAt}` : ''}`,
      'no music: lead by the clock and by effort',
      ...[leadersOf(ride)].filter((names) => names !== undefined),
    ],
    ...asidesOf(report),
    stamp: stampOf(ride, date),
    lines: withoutMusic(report).map((stretch, index) => lineOf(ride, stretch, index)),
  }
}

function lineOf({ startsAt }: Ride, { from, to, easy, hard, bouts }: PlainStretch, index: number): PlainLine {
  const [low, high] = [half(easy), half(hard)]
  const span = {
    from: formatClock(toFives(from)),
    to: formatClock(toFives(to)),
    ...(startsAt && { clock: wallClockAfter(startsAt, from) }),
  }
  const common = { id: `${index}`, ...span }
  if (!bouts) {
    const level = low === high ? formatEffort(low) : `${formatEffort(low)} to ${formatEffort(high)}`
    return { ...common, level, effort: { from: low, to: high }, words: words.names.effort({ effort: high }) }
  }
  return {
    ...common,
    level: `${formatEffort(low)} / ${formatEffort(high)}`,
    effort: { from: high, to: high },
    words: `${oftenOf(bouts)} at ${formatEffort(high)}, ${words.names.effort({ effort: high })}; the rest at ${formatEffort(low)}, ${words.names.effort({ effort: low })}`,
  }
}

/** "Once 2:40", "3 times 20 s", "2:40 and 2 times 55 s": what differs is not made alike. */
function oftenOf(bouts: readonly number[]): string {
  const lengths = bouts.map((seconds) => formatDuration(toFives(seconds)))
  const times = (length: string): number => lengths.filter((other) => other === length).length
  const different = [...new Set(lengths)]
  if (lengths.length === 1) return `once ${lengths[0]!}`
  return joinWords(different.map((length) => (times(length) === 1 ? length : `${times(length)} times ${length}`)))
}

const half = (effort: number): number => Math.round(effort * 2) / 2
/** To five seconds: nobody reads a wall clock finer. */
const toFives = (seconds: number): number => Math.max(0, Math.round(seconds / 5) * 5)
