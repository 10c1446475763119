import { fix, inQuotes } from '#engine/findings/finding.ts'
import type { Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Block, Length, Ride } from '#plan/model.ts'
import { amountOf } from '#plan/remeasure.ts'
import { sayLength } from '#plan/words.ts'
import type { Counts } from '#units/units.ts'

/** Makes a block longer (or shorter, by a negative amount) in the measure it has; undefined where nothing of it would be left. */
export function lengthFix(block: Block, by: number, eight: Counts): Fix | undefined {
  const amount = amountOf(block.length) + by
  if (by === 0 || !(amount > 0)) return undefined
  const more: Length = 'counts' in block.length ? { counts: Math.abs(by) } : { seconds: Math.abs(by) }
  const [now, done] = by > 0 ? ['Extend', 'Extended'] : ['Shorten', 'Shortened']
  const size = sayLength(more, eight)
  return fix(`${now} ${inQuotes(block)} by ${size}`, `${done} ${inQuotes(block)} by ${size}`, (ride) => setLength(ride, block.id, amount))
}

const setLength = (ride: Ride, blockId: string, amount: number): Ride =>
  editBlock(ride, blockId, (block) => ({ ...block, length: 'counts' in block.length ? { counts: amount } : { seconds: amount } }))
