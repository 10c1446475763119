import type { Command } from '#plan/commands/command.ts'
import type { Ride } from '#plan/model.ts'
import { type BlockPatch, patchBlocks } from './patchBlocks.ts'

/** Replaces fields of one block; see `patchBlocks`. */
export const patchBlock = (ride: Ride, { blockId, patch }: { blockId: string; patch: BlockPatch }): Command =>
  patchBlocks(ride, { blockIds: [blockId], patch })
