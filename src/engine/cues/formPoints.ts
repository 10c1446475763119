import type { PlayedBlock } from '#engine/played.ts'
import type { CueReport } from '#engine/report.ts'
import type { Seconds } from '#units/units.ts'

/** A hold long enough to be talked through, in seconds (common practice). */
const LONG_HOLD: Seconds = 45

/** A form point offered for a block that has none. */
interface OfferedPoint {
  block: number
  text: string
}

/**
 * One form point for every longer hold without one, going round the leader's own bank so that
 * no two neighbours get the same.
 *
 * @param bank the leader's own points, in their order; nothing is offered from an empty one
 */
export function offerFormPoints(
  blocks: readonly PlayedBlock[],
  { lines }: Pick<CueReport, 'lines'>,
  bank: readonly string[],
): OfferedPoint[] {
  if (bank.length === 0) return []
  const spoken = new Set(lines.filter(({ moment }) => moment === 'form').map(({ block }) => block))
  const long = blocks.filter(({ from, to, index }) => to - from >= LONG_HOLD && !spoken.has(index))
  return long.map(({ index }, i) => ({ block: index, text: bank[i % bank.length]! }))
}
