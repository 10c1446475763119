import { fallenNames, withItems } from '#engine/leading/items.ts'
import { type Led, type LedSection, type Measure, withSection } from '#engine/leading/led.ts'
import { type LedTimes, measureClock, momentAt } from '#engine/leading/ledTimes.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'
import { type Acted, nothing, type Standing } from './act.ts'

/** Stay here: the eight that is being ridden comes again and again; without beats the clock of the block stands still. */
export function hold(standing: Standing): Acted {
  const { plan, led, times, at } = standing
  const moment = momentAt(plan, led, times, at)
  if (moment.kind !== 'item') return { led: { ...led, hold: { at, moment } }, said: say('led.waiting') }
  const section = led.sections[moment.section]!
  if (!section.counted) return { led: { ...led, hold: { at, moment } }, said: say('led.holding') }
  const eight = moment.from + Math.floor(Math.max(0, moment.place - moment.from) / section.eight) * section.eight
  return { led: { ...led, hold: { at, moment, eight } }, said: say('led.holdingEight') }
}

/** On from a hold, at the end of the eight that is being ridden. */
export function go(standing: Standing): Acted {
  const { plan, led, times, at } = standing
  if (!led.hold) return nothing(standing, say('led.nothingHeld'))
  const { hold: since, ...free } = led
  const { moment } = since
  const waited = at - since.at
  if (moment.kind === 'after') return { led: { ...free, clearUp: led.clearUp + waited }, said: ON }
  const section = led.sections[moment.section]!
  if (moment.kind === 'leadIn') return { led: later(free, moment.section, times, waited), said: ON }
  const { one } = times[moment.section]!
  const now = measureClock(plan, section, one).placeAt(at)
  if (moment.kind === 'tail') return { led: withSection(free, moment.section, { end: Math.max(section.end, now) }), said: ON }
  const added = since.eight === undefined ? waited : repeatsOf(since.eight, now, section.eight) * section.eight
  if (added === 0) return { led: free, said: ON }
  const held = section.items[moment.item]!
  const longer = withItems(section, section.items.with(moment.item, { ...held, length: held.length + added }))
  const next = { ...longer, end: Math.max(longer.end, now) }
  return { led: withSection(free, moment.section, next), said: say('led.on', { fallen: fallenNames(plan, section, next) }) }
}

const ON = say('led.on', { fallen: [] })

/** Whole times the held eight has come again at a place. */
const repeatsOf = (eight: Measure, place: Measure, length: Measure): number => Math.max(0, Math.floor((place - eight) / length))

function later(led: Led, index: number, times: readonly LedTimes[], waited: Seconds): Led {
  const { one, leadIn }: LedSection = led.sections[index]!
  return withSection(led, index, one === undefined ? { leadIn: leadIn + waited } : { one: times[index]!.one + waited })
}

/** Seconds by which a hold that goes on has put off the end of the class so far: all of them; under music, which plays on, what it runs past the song's end. */
export function putOff({ led, times, at }: Pick<Standing, 'led' | 'times' | 'at'>): Seconds {
  if (!led.hold) return 0
  const { moment, at: since } = led.hold
  const playing = (moment.kind === 'item' || moment.kind === 'tail') && led.sections[moment.section]!.music
  return playing ? Math.max(0, at - times[moment.section]!.to) : at - since
}
