import type { PlayedBlock } from '#engine/played.ts'
import { isInside } from '#plan/cueStart.ts'
import type { Seconds } from '#units/units.ts'
import type { CueLine } from './placeCues.ts'

/**
 * Where the room of a line begins: an announcement tells the next thing only, so it starts
 * after the change before; a form point or a story stays inside its block. Null where it may
 * start anywhere before.
 */
export function roomFrom(blocks: readonly PlayedBlock[], { moment, block }: Pick<CueLine, 'moment' | 'block'>): Seconds | null {
  const { from } = blocks[block]!
  if (isInside({ moment })) return from
  if (moment === 'preview') return null
  let before = block - 1
  while (before >= 0 && blocks[before]!.to <= blocks[before]!.from) before--
  return before < 0 ? null : blocks[before]!.from
}

/**
 * The seconds there are for a line's words: from where its room begins, or the end of what is
 * spoken before them, to the moment they are over. Words that begin as their block does have the
 * time to what is spoken next, or to the block's end.
 *
 * @param lines all lines of the ride by their start, this one among them
 */
export function roomFor(line: CueLine, lines: readonly CueLine[], blocks: readonly PlayedBlock[]): Seconds {
  if (opensBlock(line, blocks)) {
    const { to } = blocks[line.block]!
    const next = lines.find((other) => other !== line && other.from > line.from)
    return Math.min(to, next?.from ?? to) - line.from
  }
  let start = roomFrom(blocks, line) ?? 0
  for (const other of lines) {
    if (other === line || other.from > line.from) break
    start = Math.max(start, Math.min(other.to, line.to))
  }
  return line.to - Math.min(start, line.to)
}

/** Words inside a block that begin with it: when they end follows from how long they take. */
export const opensBlock = (line: Pick<CueLine, 'moment' | 'block' | 'from'>, blocks: readonly PlayedBlock[]): boolean =>
  isInside(line) && line.from <= blocks[line.block]!.from
