import { fix } from '#engine/findings/finding.ts'
import type { Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Block, Length, Ride } from '#plan/model.ts'
import { lengthText, quotedItem } from '#plan/names.ts'
import { amountOf } from '#plan/remeasure.ts'
import type { Counts } from '#units/units.ts'
import { say } from '#words/said.ts'

/** Makes a block longer (or shorter, by a negative amount) in the measure it has; undefined where nothing of it would be left. */
export function lengthFix(block: Block, by: number, eight: Counts): Fix | undefined {
  const amount = amountOf(block.length) + by
  if (by === 0 || !(amount > 0)) return undefined
  const more: Length = 'counts' in block.length ? { counts: Math.abs(by) } : { seconds: Math.abs(by) }
  const said = { block: quotedItem(block), by: lengthText(more, eight) }
  const [now, done] =
    by > 0 ? [say('checks.extend', said), say('checks.extended', said)] : [say('checks.shorten', said), say('checks.shortened', said)]
  return fix(now, done, (ride) => setLength(ride, block.id, amount))
}

const setLength = (ride: Ride, blockId: string, amount: number): Ride =>
  editBlock(ride, blockId, (block) => ({ ...block, length: 'counts' in block.length ? { counts: amount } : { seconds: amount } }))
