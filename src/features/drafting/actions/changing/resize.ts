import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { chosenBlocks } from '#features/drafting/panel/blocks/eachBlock.ts'
import type { Command } from '#plan/commands/command.ts'
import { patchEach } from '#plan/commands/patchBlocks.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import type { Length, Ride, Song } from '#plan/model.ts'
import { amountOf } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'
import { change } from './change.ts'

/** Seconds a timed block grows by at one press. */
const TIMED_STEP: Seconds = 5

const resizeBy = (steps: 1 | -1, fine: boolean) => ({
  does: say(fine ? 'actions.resizeFineDo' : 'actions.resizeDo'),
  writes: true as const,
  keyOnly: true as const,
  can: ({ target }: DraftGround) => target.kind === 'block',
  do: (on: DraftGround) => change(on, (ride, _, ids) => resized(ride, ids, steps, fine)),
})

export const LONGER: DraftAction = { id: 'stage.longer', name: say('actions.longer'), keys: ['+'], ...resizeBy(1, false) }
export const SHORTER: DraftAction = { id: 'stage.shorter', name: say('actions.shorter'), keys: ['-'], ...resizeBy(-1, false) }
export const LITTLE_LONGER: DraftAction = {
  id: 'stage.littleLonger',
  name: say('actions.littleLonger'),
  keys: ['Alt++'],
  ...resizeBy(1, true),
}
export const LITTLE_SHORTER: DraftAction = {
  id: 'stage.littleShorter',
  name: say('actions.littleShorter'),
  keys: ['Alt+-'],
  ...resizeBy(-1, true),
}

/** Each by its own step; several in one go. */
function resized(ride: Ride, ids: readonly string[], steps: number, fine: boolean): Command | null {
  const lengths = chosenBlocks(ride, ids).map(({ block, song }) => ({
    blockId: block.id,
    length: stepped(block.length, song, steps, fine),
  }))
  const [first, ...others] = lengths
  if (!first) return null
  if (others.length === 0) return resizeBlock(ride, first)
  return patchEach(
    ride,
    lengths.map(({ blockId, length }) => ({ blockId, patch: { length } })),
  )
}

function stepped(length: Length, song: Song | null | undefined, steps: number, fine: boolean): Length {
  const step = fine ? 1 : 'seconds' in length ? TIMED_STEP : eightOf(song?.grid)
  const amount = Math.max(step, amountOf(length) + steps * step)
  return 'seconds' in length ? { seconds: amount } : { counts: amount }
}
