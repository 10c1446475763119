import { fallenNames, nameOf, withItems } from '#engine/leading/items.ts'
import { type LedItem, type LedSection, withSection } from '#engine/leading/led.ts'
import { momentAt } from '#engine/leading/ledTimes.ts'
import { say } from '#words/said.ts'
import { type Acted, nothing, type Standing } from './act.ts'

/** The round of a set once more when it is over; outside a set the block. What no longer fits falls off the end of the song. */
export function again(standing: Standing): Acted {
  const { plan, led, times, at } = standing
  const moment = momentAt(plan, led, times, at)
  if (moment.kind !== 'item') return nothing(standing, say('led.noBlockToRepeat'))
  const section = led.sections[moment.section]!
  const { from, to } = passAround(section, moment.item)
  const pass = section.items[moment.item]!.pass
  const number = 1 + Math.max(0, ...section.items.map((item) => (item.pass?.setId === pass?.setId ? (item.pass?.number ?? 0) : 0)))
  const copies = section.items.slice(from, to).map((item): LedItem => (pass ? { ...item, pass: { ...pass, number } } : item))
  const next = withItems(section, section.items.toSpliced(to, 0, ...copies))
  const fallen = fallenNames(plan, section, next)
  return {
    led: withSection(led, moment.section, next),
    said: pass ? say('led.roundAgain', { fallen }) : say('led.blockAgain', { block: nameOf(plan, section.items[moment.item]!), fallen }),
  }
}

/** The items of the same pass through a set around one; the item alone outside a set. */
function passAround({ items }: LedSection, index: number): { from: number; to: number } {
  const own = items[index]!.pass
  const same = (item: LedItem | undefined) => own !== undefined && item?.pass?.setId === own.setId && item.pass.number === own.number
  let from = index
  let to = index + 1
  while (same(items[from - 1])) from--
  while (same(items[to])) to++
  return { from, to }
}
