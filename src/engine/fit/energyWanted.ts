import type { Energy } from '#engine/loudness/guessEnergy.ts'
import { type Item, isSet } from '#plan/model.ts'
import type { Effort } from '#units/units.ts'

/** The hardest effort of a stretch up to which each energy carries it; above the last it wants all there is (common practice). */
const UP_TO: readonly (readonly [Effort, Energy])[] = [
  [3.5, 1],
  [5, 2],
  [6.5, 3],
  [8, 4],
]

/** How much drive blocks want of their song, by their hardest effort; undefined without blocks. */
export function energyWanted(items: readonly Item[]): Energy | undefined {
  const blocks = items.flatMap((item) => (isSet(item) ? item.parts : [item]))
  if (blocks.length === 0) return undefined
  const hardest = Math.max(...blocks.map(({ effort }) => Math.max(effort.from, effort.to)))
  return UP_TO.find(([effort]) => hardest <= effort)?.[1] ?? 5
}
