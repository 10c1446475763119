import { laySection } from '#engine/timeline/laySection.ts'
import type { Block, Section } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'

/** Every block a section plays, with its seconds, and the open tail as more of the last one. */
export function partsSeconds(section: Section): { block: Block; seconds: Seconds }[] {
  const laid = laySection(section)
  const parts = laid.blocks.map(({ block, from, to }) => ({ block, seconds: to - from }))
  const last = parts.at(-1)
  if (last) last.seconds += laid.seconds - laid.blocks.at(-1)!.to
  return parts
}
