import { type PlainStretch, withoutMusic } from '#engine/prepare/withoutMusic.ts'
import type { RideReport } from '#engine/report.ts'
import { asidesOf } from '#features/sheet/contents/asidesOf.ts'
import type { Aside } from '#features/sheet/contents/contents.ts'
import { leadersOf } from '#features/sheet/contents/leadersOf.ts'
import { stampOf } from '#features/sheet/contents/stampOf.ts'
import type { Ride } from '#plan/model.ts'
import { wallClockAfter } from '#units/wallClockAfter.ts'
import { clock, duration, effort, wallClock } from '#words/forms.ts'
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
    title: ride.title || words.names.untitled,
    facts: [
      words.printed.classFrom({ minutes: ride.slotMinutes, startsAt: ride.startsAt }),
      words.printed.noMusic,
      ...[leadersOf(ride)].filter((names) => names !== undefined),
    ],
    ...asidesOf(report),
    stamp: stampOf(ride, date),
    lines: withoutMusic(report).map((stretch, index) => lineOf(ride, stretch, index)),
  }
}

function lineOf({ startsAt }: Ride, { from, to, easy, hard, bouts }: PlainStretch, index: number): PlainLine {
  const { names } = words
  const [low, high] = [half(easy), half(hard)]
  const span = {
    from: clock(toFives(from)),
    to: clock(toFives(to)),
    ...(startsAt && { clock: wallClock(wallClockAfter(startsAt, from)) }),
  }
  const common = { id: `${index}`, ...span }
  if (!bouts) {
    const level = words.printed.level({ from: low, to: high })
    return { ...common, level, effort: { from: low, to: high }, words: names.effort({ effort: high }) }
  }
  return {
    ...common,
    level: `${effort(low)} / ${effort(high)}`,
    effort: { from: high, to: high },
    words: words.printed.hardAndEasy({
      often: oftenOf(bouts),
      hard: high,
      hardWords: names.effort({ effort: high }),
      easy: low,
      easyWords: names.effort({ effort: low }),
    }),
  }
}

/** "once 2:40", "3 times 20 s"; "2:40", "2 times 55 s": what differs is not made alike. */
function oftenOf(bouts: readonly number[]): string[] {
  const lengths = bouts.map((seconds) => duration(toFives(seconds)))
  const times = (length: string): number => lengths.filter((other) => other === length).length
  const different = [...new Set(lengths)]
  if (lengths.length === 1) return [words.printed.once({ length: lengths[0]! })]
  return different.map((length) => (times(length) === 1 ? length : words.printed.times({ times: times(length), length })))
}

const half = (effort: number): number => Math.round(effort * 2) / 2
/** To five seconds: nobody reads a wall clock finer. */
const toFives = (seconds: number): number => Math.max(0, Math.round(seconds / 5) * 5)
