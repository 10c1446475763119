import type { Cue } from '#plan/model.ts'
import type { CueLine } from './placeCues.ts'

/** The lines of every played block, in the order they are spoken. Cost: linear. */
export function linesByBlock(report: { blocks: readonly unknown[]; cues: { lines: readonly CueLine[] } }): readonly (readonly CueLine[])[] {
  const lines: CueLine[][] = report.blocks.map(() => [])
  for (const line of report.cues.lines) lines[line.block]!.push(line)
  return lines
}

/**
 * A block's cues in the order they are spoken, wherever its words are listed: a count-in comes before a form point, however
 * they were written. What is not spoken, for it has no words, keeps the end.
 *
 * @param lines of the block, or more, by their start
 */
export function inSpokenOrder(cues: readonly Cue[], lines: readonly CueLine[]): Cue[] {
  const place = new Map<string, number>()
  for (const [index, { cue }] of lines.entries()) if (!place.has(cue.id)) place.set(cue.id, index)
  const placeOf = ({ id }: Cue): number => place.get(id) ?? Number.POSITIVE_INFINITY
  return cues.toSorted((a, b) => (placeOf(a) === placeOf(b) ? 0 : placeOf(a) - placeOf(b)))
}
