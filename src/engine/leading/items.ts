import { nameOfItem } from '#plan/names.ts'
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

/**
 * The section with other items. Music ends when it ends, and what no longer fits falls off;
 * without music the section is as long as its blocks.
 */
export function withItems(section: LedSection, items: readonly LedItem[]): LedSection {
  const whole = lengthOf(section.items)
  const end = section.music ? section.end : section.end + lengthOf(items) - whole
  return { ...section, items: clipped(items, end), end, changed: true, called: undefined }
}

/** "“ease” and “push” fall off the end of the song", or nothing where all of it still fits. */
export function sayFallen(plan: Plan, section: LedSection, wanted: readonly LedItem[], kept: readonly LedItem[]): string {
  const fallen = wanted.slice(kept.length).map((item) => nameOf(plan, item))
  if (fallen.length === 0) return ''
  const names = [...new Set(fallen)]
  const what = names.length > 2 ? `${names.length} blocks` : names.join(' and ')
  return section.music ? `; ${what} ${fallen.length > 1 ? 'fall' : 'falls'} off the end of the song` : ''
}

/** A led item's name in quotes. */
export const nameOf = ({ report }: Plan, { planned }: LedItem): string => `“${nameOfItem(report.blocks[planned]!.block)}”`
