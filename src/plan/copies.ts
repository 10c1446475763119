import { type Block, type Item, isSet, type Section } from '#plan/model.ts'

/** Makes the ids of new things; every call another one. */
export type NewId = () => string

/**
 * Ids drawn once and handed out again in the same order at every round, so that a command
 * applied twice (a preview, then the real thing) gives equal rides.
 */
export function rememberedIds(newId: NewId): () => NewId {
  const drawn: string[] = []
  return () => {
    let used = 0
    return () => {
      const id = drawn[used] ?? newId()
      drawn[used++] = id
      return id
    }
  }
}

/** A copy of a block with ids of its own, cues included. */
export function copyBlock(block: Block, newId: NewId): Block {
  return { ...block, id: newId(), cues: block.cues.map((cue) => ({ ...cue, id: newId() })) }
}

/** A copy of a block or a whole set with ids of its own. */
export function copyItem(item: Item, newId: NewId): Item {
  return isSet(item) ? { ...item, id: newId(), parts: item.parts.map((part) => copyBlock(part, newId)) } : copyBlock(item, newId)
}

/** A copy of a section with ids of its own; the song keeps its id, being the same song. */
export function copySection(section: Section, newId: NewId): Section {
  return { ...section, id: newId(), blocks: section.blocks.map((item) => copyItem(item, newId)) }
}
