import { asPlaying, clipped, nameOf, startOf, withItems } from '#engine/leading/items.ts'
import { type LedSection, type Measure, withSection } from '#engine/leading/led.ts'
import { momentAt } from '#engine/leading/ledTimes.ts'
import { say } from '#words/said.ts'
import { type Acted, nothing, type Standing } from './act.ts'
import { hearOne } from './hearOne.ts'
import { leaveSong } from './skipSong.ts'

/**
 * On to what comes next. Before a song that is its count one, now. In a block the next begins at
 * the nearest eight, without beats at once, and the rest of the song comes earlier; a second press
 * before it has begun skips it too. After the last block of a song comes the next song.
 */
export function nextBlock(standing: Standing): Acted {
  const { plan, led, times, at } = standing
  const moment = momentAt(plan, led, times, at)
  if (moment.kind === 'after') return nothing(standing, say('led.nothingAfter'))
  if (moment.kind === 'leadIn') return hearOne(standing)
  const section = led.sections[moment.section]!
  if (moment.kind === 'tail') return leaveSong(standing, moment.section, moment.place)
  const { item, from, place } = moment
  const called = section.called !== undefined && place < section.called
  const index = called ? item + 1 : item
  const start = called ? section.called! : from
  const end = called ? start : nearestEight(section, from, place)
  if (index + 1 >= asPlaying(section).items.length) return leaveSong(standing, moment.section, Math.max(end, place))
  const kept = clipped(section.items.slice(0, index + 1), end)
  const next = withItems(section, [...kept, ...section.items.slice(index + 1)])
  const coming = next.items[kept.length]
  return {
    led: withSection(led, moment.section, { ...next, ...(end > place && { called: end }) }),
    said: coming ? say('led.onTo', { block: nameOf(plan, coming) }) : say('led.on', { fallen: [] }),
  }
}

/** The eight of a block nearest to a place in it, the place itself where there are no beats. */
export function nearestEight({ counted, eight, items }: LedSection, from: Measure, place: Measure): Measure {
  if (!counted) return place
  const index = items.findIndex((_, i) => startOf(items, i + 1) > from)
  const most = startOf(items, index + 1)
  return Math.min(most, from + Math.max(0, Math.round((place - from) / eight)) * eight)
}
