import { quotedItem } from '#plan/names.ts'
import type { Text } from '#words/said.ts'
import type { LedItem, LedSection, Measure, Plan } from './led.ts'

/** Less than this is nothing: rounding. */
const NOTHING: Measure = 1e-9

/** Items up to a place, the one across it shortened. */
export function clipped(items: readonly LedItem[], end: Measure): LedItem[] {
  const kept: LedItem[] = []
  let from: Measure = 0
  for (const item of items) {
    const length = Math.min(item.length, end - from)
    if (length <= NOTHING) break
    kept.push(length < item.length - NOTHING ? { ...item, length } : item)
    from += item.length
  }
  return kept
}

/** Where an item starts. */
export const startOf = (items: readonly LedItem[], index: number): Measure =>
  items.slice(0, index).reduce((sum, { length }) => sum + length, 0)

export const lengthOf = (items: readonly LedItem[]): Measure => startOf(items, items.length)

/** The section with other items. Music ends when it ends; without music the section is as long as its blocks. */
export function withItems(section: LedSection, items: readonly LedItem[]): LedSection {
  const end = section.music ? section.end : section.end + lengthOf(items) - lengthOf(section.items)
  return { ...section, items, end, changed: true, called: undefined }
}

/** The section with what comes before its end: what music leaves no room for is kept in mind, in case room comes back, but not ridden. */
export function asPlaying(section: LedSection): LedSection {
  const items = clipped(section.items, section.end)
  return items.every((item, i) => item === section.items[i]) && items.length === section.items.length ? section : { ...section, items }
}

/** What falls off the end of the song that did not before, each name once. */
export function fallenNames(plan: Plan, before: LedSection, after: LedSection): Text[] {
  const already = new Set(fallenOf(before))
  const fallen = fallenOf(after).filter((item) => !already.has(item))
  const firsts = new Map(fallen.map((item) => [keyOf(plan, item), item] as const).reverse())
  return fallen.filter((item) => firsts.get(keyOf(plan, item)) === item).map((item) => nameOf(plan, item))
}

/** What tells a name from another: its own label, else what it is. */
const keyOf = ({ report }: Plan, { planned }: LedItem): string => {
  const { label, terrain } = report.blocks[planned]!.block
  return label || terrain
}

const fallenOf = (section: LedSection): readonly LedItem[] => section.items.slice(asPlaying(section).items.length)

/** A led item's name in quotes. */
export const nameOf = ({ report }: Plan, { planned }: LedItem): Text => quotedItem(report.blocks[planned]!.block)
