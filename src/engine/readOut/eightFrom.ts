import type { LedClass } from '#engine/leading/ledClass.ts'
import { measureClock } from '#engine/leading/ledTimes.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import type { Seconds } from '#units/units.ts'

/** Where there are no beats. */
const BY_CLOCK: Seconds = 5

/** Rounding must not find the eight that one stands on. */
const NEAR = 1e-6

/** The moment the next eight begins, or the one before did (in six a six); five seconds on or back where nothing is counted. Inside the ride. */
export function eightFrom(led: LedClass, at: Seconds, way: 1 | -1): Seconds {
  const within = (moment: Seconds) => Math.min(led.report.overall.total, Math.max(0, moment))
  const { section, phase } = stateOf(led, at)
  const song = section === undefined ? undefined : led.led.sections[section]
  if (!song?.counted || (phase !== 'block' && phase !== 'openTail')) return within(at + way * BY_CLOCK)
  const clock = measureClock(led.plan, song, led.report.sections[section!]!.one)
  const place = clock.placeAt(at) / song.eight
  const next = way === 1 ? Math.floor(place + NEAR) + 1 : Math.ceil(place - NEAR) - 1
  return within(next < 0 ? at - BY_CLOCK : clock.at(next * song.eight))
}
