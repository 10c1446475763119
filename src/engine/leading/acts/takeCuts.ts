import { asPlaying, clipped, lengthOf } from '#engine/leading/items.ts'
import type { Cut } from '#engine/leading/leadLog.ts'
import type { Led, LedItem, LedSection } from '#engine/leading/led.ts'
import { ledTimes, momentAt } from '#engine/leading/ledTimes.ts'
import { say } from '#words/said.ts'
import type { Acted, Standing } from './act.ts'

/** The class without what is cut. What has begun or is over by now is not cut any more. */
export function takeCuts(standing: Standing, cuts: readonly Cut[]): Acted {
  const { led } = standing
  const next = cuts.filter((cut) => isToCome(standing, cut)).reduce(without, led)
  if (next === led) return { led, said: say('led.noLongerToCome') }
  return { led: heldBefore(standing, next), said: say('led.cut') }
}

/** What is held before a song that is gone is held before the next one. */
function heldBefore({ plan }: Standing, led: Led): Led {
  const { hold } = led
  if (hold?.moment.kind !== 'leadIn') return led
  return { ...led, hold: { ...hold, moment: momentAt(plan, led, ledTimes(plan, led), hold.at) } }
}

/** Whether all that a cut takes away is still to come. */
function isToCome({ plan, led, times, at }: Standing, cut: Cut): boolean {
  const index = led.sections.findIndex(({ planned }) => planned === cut.section)
  if (index < 0 || times[index]!.to <= at) return false
  if (times[index]!.from > at) return true
  if (cut.kind === 'song') return false
  const moment = momentAt(plan, led, times, at)
  if (moment.kind !== 'item') return moment.kind === 'leadIn'
  const before = led.sections[index]!.items
  const { items, end } = shortened(asPlaying(led.sections[index]!), cut)
  return end > moment.place && before.slice(0, moment.item).every((item, i) => item === items[i]) && lengthOf(items) > moment.place
}

/** The class without one thing. */
export function without(led: Led, cut: Cut): Led {
  const index = led.sections.findIndex(({ planned }) => planned === cut.section)
  if (index < 0) return led
  if (cut.kind === 'song') return { ...led, sections: led.sections.toSpliced(index, 1) }
  const section = asPlaying(led.sections[index]!)
  const shorter = shortened(section, cut)
  return shorter === section ? led : { ...led, sections: led.sections.with(index, { ...shorter, changed: true, called: undefined }) }
}

function shortened(section: LedSection, cut: Exclude<Cut, { kind: 'song' }>): LedSection {
  switch (cut.kind) {
    case 'outro': {
      const end = section.end - cut.counts
      return { ...section, end, items: clipped(section.items, end) }
    }
    case 'phrase': {
      const at = section.items.findLastIndex(({ planned, length }) => planned === cut.block && length > cut.counts)
      if (at < 0) return section
      return fewer(section, section.items.with(at, { ...section.items[at]!, length: section.items[at]!.length - cut.counts }))
    }
    case 'rounds': {
      const gone = lastPasses(section.items, cut.setId, cut.rounds)
      return gone.size === 0
        ? section
        : fewer(
            section,
            section.items.filter((item) => !gone.has(item)),
          )
    }
  }
}

/** The section with fewer items; its end comes as much earlier. */
const fewer = (section: LedSection, items: readonly LedItem[]): LedSection => ({
  ...section,
  items,
  end: section.end - (lengthOf(section.items) - lengthOf(items)),
})

/** The items of a set's last passes. */
export function lastPasses(items: readonly LedItem[], setId: string, rounds: number): Set<LedItem> {
  const own = items.filter((item) => item.pass?.setId === setId)
  const passes = [...new Set(own.map(({ pass }) => pass!.number))].slice(-rounds)
  return new Set(own.filter(({ pass }) => passes.includes(pass!.number)))
}
