import { type SectionClock, sectionClock } from '#engine/cues/sectionClock.ts'
import type { Seconds } from '#units/units.ts'
import { type Led, type LedSection, type Measure, type Moment, type Plan, sectionOf } from './led.ts'

/** A led section on the class clock. */
export interface LedTimes {
  /** Start of the lead-in, count one, and the end. */
  from: Seconds
  one: Seconds
  to: Seconds
  /** The end as it would be without the next song coming in over it. */
  end: Seconds
}

/** Places of a section in its own measure and on the class clock. */
interface MeasureClock {
  at: (place: Measure) => Seconds
  placeAt: (moment: Seconds) => Measure
  /** Which beat a place is, the same as the place but where a song has beats over or missing. */
  beatOf: (place: Measure) => number
}

/** The clock of a section whose count one is heard at `one`. */
export function measureClock(plan: Plan, section: LedSection, one: Seconds): MeasureClock {
  if (!section.counted) return { at: (place) => one + place, placeAt: (moment) => moment - one, beatOf: (place) => place }
  const clock: SectionClock = sectionClock(sectionOf(plan, section), one)
  return { at: clock.at, placeAt: clock.countAt, beatOf: clock.beatOf }
}

/**
 * Where every section stands on the class clock: its count one where that was heard, else its
 * lead-in after the end of the section before; a negative lead-in reaches back to that section's
 * own count one at most. The same rules as the ride's timeline.
 */
export function ledTimes(plan: Plan, { sections }: Pick<Led, 'sections'>): LedTimes[] {
  const times: LedTimes[] = []
  let end = plan.ride.briefingSeconds
  let earliest = end
  for (const section of sections) {
    const one = section.one ?? Math.max(earliest, end + section.leadIn)
    const before = times.at(-1)
    if (before && one < end) before.to = one
    const own = measureClock(plan, section, one).at(section.end)
    times.push({ from: Math.min(end, one), one, to: own, end: own })
    earliest = one
    end = own
  }
  return times
}

/** What a class time falls into. */
export function momentAt(plan: Plan, led: Led, times: readonly LedTimes[], at: Seconds): Moment {
  const index = times.findIndex(({ to }) => at < to)
  if (index < 0) return { kind: 'after' }
  const { one } = times[index]!
  if (at < one) return { kind: 'leadIn', section: index }
  const section = led.sections[index]!
  const place = measureClock(plan, section, one).placeAt(at)
  let from: Measure = 0
  for (const [item, { length }] of section.items.entries()) {
    if (place < from + length) return { kind: 'item', section: index, item, from, place }
    from += length
  }
  return { kind: 'tail', section: index, place }
}
