import { clipped, fallenNames, nameOf, withItems } from '#engine/leading/items.ts'
import { withSection } from '#engine/leading/led.ts'
import { momentAt } from '#engine/leading/ledTimes.ts'
import { say } from '#words/said.ts'
import { type Acted, nothing, type Standing } from './act.ts'
import { nearestEight } from './nextBlock.ts'

/**
 * This block from its start, from the nearest eight on; pressed in the block's first eight, the
 * one before and then this. The first block of a song starts the song: its count one is now.
 */
export function back(standing: Standing): Acted {
  const { plan, led, times, at } = standing
  const moment = momentAt(plan, led, times, at)
  if (moment.kind === 'leadIn') return nothing(standing, say('led.nothingBegun'))
  if (moment.kind === 'after' || moment.kind === 'tail') return nothing(standing, say('led.blocksOver'))
  const { item, from, place } = moment
  const section = led.sections[moment.section]!
  if (item === 0) return { led: withSection(led, moment.section, { one: at, taps: [at] }), said: say('led.songStarts') }
  const start = nearestEight(section, from, place)
  const again = place - from < section.eight ? item - 1 : item
  const whole = plan.report.blocks[section.items[again]!.planned]!
  const length = section.items.find(({ planned }) => planned === whole.index)!.length
  const wanted = [
    ...clipped(section.items.slice(0, item + 1), start),
    { ...section.items[again]!, length: Math.max(length, section.items[again]!.length) },
    ...section.items.slice(again === item ? item + 1 : item),
  ]
  const next = withItems(section, wanted)
  return {
    led: withSection(led, moment.section, next),
    said: say('led.blockRestarts', { block: nameOf(plan, section.items[again]!), fallen: fallenNames(plan, section, next) }),
  }
}
