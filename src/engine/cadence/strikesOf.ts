import type { Block, Section, StrikesPerBeat } from '#plan/model.ts'

/** Strikes per beat of a block: its own, else its song's; null rides off the beat. */
export function strikesOf(block: Block, section: Section): StrikesPerBeat {
  return block.strikesPerBeat === undefined ? (section.song?.strikesPerBeat ?? null) : block.strikesPerBeat
}
