import { type SectionClock, sectionClock } from '#engine/cues/sectionClock.ts'
import type { SectionReport } from '#engine/played.ts'
import { startsBar } from '#engine/timeline/startsBar.ts'
import type { Section } from '#plan/model.ts'
import type { Click, ClickKind } from '#plan/sound/score.ts'
import type { Seconds } from '#units/units.ts'

/**
 * The clicks of a section that fall into a stretch of the ride clock, `from` included and `to` not:
 * one a beat from its count one to its end, whatever the tempo does in between. Neighbouring
 * stretches share a moment and no click. None where the section has no beats; with `ticks` one a second there.
 */
export function clicksOf(section: Section, report: SectionReport, from: Seconds, to: Seconds, ticks = false): Click[] {
  const start = Math.max(from, report.one)
  const end = Math.min(to, report.to)
  if (!(end > start)) return []
  const clock = sectionClock(section, report.one)
  if (!clock.counted) return ticks ? everySecond(report.one, start, end) : []
  const clicks: Click[] = []
  for (let beat = firstFrom(clock, start); clock.atBeat(beat) < end; beat++)
    clicks.push({ at: clock.atBeat(beat), kind: kindOf(section, report, clock, beat) })
  return clicks
}

/** The first beat at or after a moment; asking the clock itself is proof against rounding on the way back. */
function firstFrom(clock: SectionClock, start: Seconds): number {
  let beat = Math.max(0, Math.floor(clock.beatAt(start)))
  while (beat > 0 && clock.atBeat(beat - 1) >= start) beat--
  while (clock.atBeat(beat) < start) beat++
  return beat
}

/** Eights are counted from where the section begins, bars from where the song does. */
function kindOf({ song, inCount = 0 }: Section, { unit }: SectionReport, clock: SectionClock, beat: number): ClickKind {
  const count = clock.countOf(beat)
  if (count % unit.eight === 0) return 'eight'
  return startsBar(inCount + count, beat - clock.beatOf(Math.floor(count)), song!.grid!.beatsPerBar) ? 'bar' : 'beat'
}

function everySecond(one: Seconds, start: Seconds, end: Seconds): Click[] {
  const clicks: Click[] = []
  for (let second = Math.max(0, Math.ceil(start - one)); one + second < end; second++) clicks.push({ at: one + second, kind: 'second' })
  return clicks
}
