import { clipped, lengthOf } from '#engine/leading/items.ts'
import type { Cut } from '#engine/leading/leadLog.ts'
import type { Led, LedItem, LedSection } from '#engine/leading/led.ts'
import type { Acted, Standing } from './act.ts'

/** The class without what is cut. A cut of something that is no longer there changes nothing. */
export function takeCuts({ led, times, at }: Standing, cuts: readonly Cut[]): Acted {
  const begun = (planned: number) => times.some(({ from }, i) => led.sections[i]!.planned === planned && from <= at)
  const next = cuts.filter(({ kind, section }) => kind !== 'song' || !begun(section)).reduce(without, led)
  return { led: next, said: next === led ? 'That is no longer to come.' : 'Cut.' }
}

/** The class without one thing. */
export function without(led: Led, cut: Cut): Led {
  const index = led.sections.findIndex(({ planned }) => planned === cut.section)
  if (index < 0) return led
  if (cut.kind === 'song') return { ...led, sections: led.sections.toSpliced(index, 1) }
  const section = led.sections[index]!
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
