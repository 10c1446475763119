import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import type { Command } from '#plan/commands/command.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import type { Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
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
  do: (on: DraftGround) => change(on, (ride, id) => resized(ride, id, steps, fine)),
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

function resized(ride: Ride, id: string, steps: number, fine: boolean): Command | null {
  const place = findBlock(ride, id)
  if (!place) return null
  const { length } = place.block
  if ('seconds' in length) {
    const step = fine ? 1 : TIMED_STEP
    return resizeBlock(ride, { blockId: id, length: { seconds: Math.max(step, length.seconds + steps * step) } })
  }
  const step = fine ? 1 : eightOf(place.section.song?.grid)
  return resizeBlock(ride, { blockId: id, length: { counts: Math.max(step, length.counts + steps * step) } })
}
