import { type SectionClock, sectionClock } from '#engine/cues/sectionClock.ts'
import type { SectionReport } from '#engine/report.ts'
import type { Section } from '#plan/model.ts'
import type { Click, ClickKind } from '#plan/score.ts'
import type { Counts, Seconds } from '#units/units.ts'

/**
 * The clicks of a section that fall into a stretch of the ride clock, `from` included and `to` not:
 * one a count from its count one to its end, whatever the tempo does in between. Neighbouring
 * stretches share a moment and no click. None where the section has no beats; with `ticks` one a second there.
 */
export function clicksOf(section: Section, report: SectionReport, from: Seconds, to: Seconds, ticks = false): Click[] {
  const start = Math.max(from, report.one)
  const end = Math.min(to, report.to)
  if (!(end > start)) return []
  const clock = sectionClock(section, report.one)
  if (!clock.counted) return ticks ? everySecond(report.one, start, end) : []
  const clicks: Click[] = []
  for (let count = firstFrom(clock, start); clock.at(count) < end; count++)
    clicks.push({ at: clock.at(count), kind: kindOf(section, report, count) })
  return clicks
}

/** The first count at or after a moment; asking the clock itself is proof against rounding on the way back. */
function firstFrom(clock: SectionClock, start: Seconds): Counts {
  let count = Math.max(0, Math.floor(clock.countAt(start)))
  while (count > 0 && clock.at(count - 1) >= start) count--
  while (clock.at(count) < start) count++
  return count
}

/** Eights are counted from where the section begins, bars from where the song does. */
function kindOf({ song, inCount = 0 }: Section, { unit }: SectionReport, count: Counts): ClickKind {
  if (count % unit.eight === 0) return 'eight'
  return (inCount + count) % song!.grid!.beatsPerBar === 0 ? 'bar' : 'beat'
}

function everySecond(one: Seconds, start: Seconds, end: Seconds): Click[] {
  const clicks: Click[] = []
  for (let second = Math.max(0, Math.ceil(start - one)); one + second < end; second++) clicks.push({ at: one + second, kind: 'second' })
  return clicks
}
