import { type LedSection, withSection } from '#engine/leading/led.ts'
import { measureClock, momentAt } from '#engine/leading/ledTimes.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { type Acted, nothing, type Standing } from './act.ts'

/** Eights from a song's count one in which a first tap that fits no eight is taken for that one itself. */
const FIRST_EIGHTS = 4
/** Beats from an eight within which a tap confirms it; more is another place in the music. */
const NEAR: Counts = 1.5
/** Seconds after the start in which a section without beats can be started again. */
const FIRST_SECONDS: Seconds = 15
/** Taps that are weighed against each other. */
const WEIGHED = 3

/**
 * A one of the music is heard. Before a song it starts the song. In its first phrase a tap that
 * falls near no eight is the song starting late: its count one is now. Anywhere else it is the
 * nearest eight. Count one then is the tap less that eight's time, the median of the last three
 * taps; a tap more than a count and a half off the others starts over. Only this song moves,
 * and the class after it follows.
 */
export function hearOne(standing: Standing): Acted {
  const { plan, led, times, at } = standing
  const moment = momentAt(plan, led, times, at)
  if (moment.kind === 'after') return nothing(standing, say('led.musicOver'))
  const section = led.sections[moment.section]!
  const { one } = times[moment.section]!
  if (moment.kind === 'leadIn') return anchored(standing, moment.section, [at])
  if (!section.counted) {
    if (at - one > FIRST_SECONDS) return nothing(standing, say('led.noBeats'))
    return anchored(standing, moment.section, [at])
  }
  const clock = measureClock(plan, section, one)
  const nearest = nearestEight(moment.place, section, clock.beatOf)
  const isNear = Math.abs(clock.beatOf(moment.place) - clock.beatOf(nearest)) <= NEAR
  const late = section.taps.length === 0 && moment.place < FIRST_EIGHTS * section.eight && !isNear
  const heard = late ? 0 : nearest
  const estimate = at - (clock.at(heard) - one)
  const count = clock.at(1) - one
  const agrees = Math.abs(estimate - one) <= NEAR * count
  return anchored(standing, moment.section, agrees ? [...section.taps, estimate].slice(-WEIGHED) : [estimate])
}

/** The section with its count one at the median of its taps. */
function anchored({ led, times }: Standing, index: number, taps: readonly Seconds[]): Acted {
  const one = median(taps)
  return { led: withSection(led, index, { one, taps }), said: sayShift(one - times[index]!.one) }
}

/** The start of the eight a place lies in, or of the next one, whichever is fewer beats away; the next one where they are as far. */
function nearestEight(place: Counts, { eight, end }: LedSection, beatOf: (place: Counts) => number): Counts {
  const begun = Math.floor(place / eight) * eight
  const isNext = beatOf(begun + eight) - beatOf(place) <= beatOf(place) - beatOf(begun)
  return Math.min(Math.floor(end / eight) * eight, Math.max(0, isNext ? begun + eight : begun))
}

/** The middle one, or the mean of the two in the middle. */
function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}

/** Shifts nobody hears. */
const UNHEARD: Seconds = 0.05

const sayShift = (shift: Seconds): Text => (Math.abs(shift) < UNHEARD ? say('led.onBeatOne') : say('led.shifted', { seconds: shift }))
