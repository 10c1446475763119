import { unrollItems } from '#engine/timeline/unrollItems.ts'
import type { Item } from '#plan/model.ts'
import { amountOf } from '#plan/remeasure.ts'
import type { Effort } from '#units/units.ts'

/** The intended effort over what items play, from 0 to 1 of it: two points a block, so that steps stay steps. */
export function planCurve(items: readonly Item[]): readonly (readonly [share: number, effort: Effort])[] {
  const blocks = unrollItems(items).map(({ block }) => block)
  const total = blocks.reduce((sum, { length }) => sum + amountOf(length), 0)
  let at = 0
  return blocks.flatMap(({ length, effort }) => {
    const from = at
    at += amountOf(length)
    return [[from / total, effort.from] as const, [at / total, effort.to] as const]
  })
}
