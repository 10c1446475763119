import { type BlockPatch, patchEach } from '#plan/commands/patchBlocks.ts'
import { type Block, isSet, type Ride, type Song } from '#plan/model.ts'
import type { AppStore } from '#store/state.ts'

/** Several blocks being edited at once, and the ways to change them: each change is one step. */
export interface EachBlock {
  blocks: readonly Block[]
  /** The songs they stand in, block for block. */
  songs: readonly (Song | null | undefined)[]
  /** The same fields for all. */
  edit: (patch: BlockPatch) => void
  /** Fields of its own for each; undefined leaves a block alone. */
  editEach: (patchOf: (block: Block, index: number) => BlockPatch | undefined) => void
  /** Shows fields while they are dragged over; null when the drag ends. */
  preview: (patchOf: ((block: Block) => BlockPatch) | null) => void
}

export function eachBlock(store: AppStore, chosen: readonly PlacedBlock[]): EachBlock {
  const blocks = chosen.map(({ block }) => block)
  const command = (patchOf: (block: Block, index: number) => BlockPatch | undefined) => {
    const patches = blocks.flatMap((block, index) => {
      const patch = patchOf(block, index)
      return patch ? [{ blockId: block.id, patch }] : []
    })
    return patchEach(store.getState().ride!, patches)
  }
  const editEach: EachBlock['editEach'] = (patchOf) => void store.getState().run(command(patchOf))
  return {
    blocks,
    songs: chosen.map(({ song }) => song),
    edit: (patch) => editEach(() => patch),
    editEach,
    preview: (patchOf) => {
      if (patchOf) store.getState().preview(command(patchOf))
      else store.getState().dropPreview()
    },
  }
}

interface PlacedBlock {
  block: Block
  song: Song | null | undefined
}

/** The blocks an action on these ids is about, in the order of the ride: a set stands for its parts. */
export function chosenBlocks(ride: Ride, ids: readonly string[]): PlacedBlock[] {
  const chosen = new Set(ids)
  return ride.sections.flatMap(({ blocks, song }) =>
    blocks
      .flatMap((item): readonly Block[] => {
        if (!isSet(item)) return chosen.has(item.id) ? [item] : []
        return chosen.has(item.id) ? item.parts : item.parts.filter((part) => chosen.has(part.id))
      })
      .map((block) => ({ block, song })),
  )
}
