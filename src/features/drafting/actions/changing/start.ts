import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import type { Command } from '#plan/commands/command.ts'
import { blockBefore, moveStart } from '#plan/commands/moveStart.ts'
import type { Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { amountOf, lengthFor } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { say } from '#words/said.ts'
import { change } from './change.ts'

/** Seconds a timed block's start moves by at one press. */
const TIMED_STEP = 5

/** Moves the joint with the block before: what its left edge does under a pointer. */
const startBy = (steps: 1 | -1, fine: boolean) => ({
  does: say(fine ? 'gestures.startFineDo' : 'gestures.startDo'),
  writes: true as const,
  keyOnly: true as const,
  can: ({ store, target }: DraftGround) => {
    if (target.kind !== 'block') return false
    const { ride } = store.getState()
    const place = ride && findBlock(ride, target.id)
    return place !== null && place !== undefined && blockBefore(place) !== undefined ? true : say('gestures.noneToTakeFrom')
  },
  do: (on: DraftGround) => change(on, (ride, id) => started(ride, id, steps, fine)),
})

export const EARLIER: DraftAction = { id: 'stage.startEarlier', name: say('gestures.earlier'), keys: [','], ...startBy(-1, false) }
export const LATER: DraftAction = { id: 'stage.startLater', name: say('gestures.later'), keys: ['.'], ...startBy(1, false) }
export const LITTLE_EARLIER: DraftAction = {
  id: 'stage.startLittleEarlier',
  name: say('gestures.littleEarlier'),
  keys: ['Alt+,'],
  ...startBy(-1, true),
}
export const LITTLE_LATER: DraftAction = {
  id: 'stage.startLittleLater',
  name: say('gestures.littleLater'),
  keys: ['Alt+.'],
  ...startBy(1, true),
}

function started(ride: Ride, id: string, steps: number, fine: boolean): Command | null {
  const place = findBlock(ride, id)
  if (!place) return null
  const length = lengthFor(place.section, place.block.length)
  const step = fine ? 1 : 'seconds' in length ? TIMED_STEP : eightOf(place.section.song?.grid)
  // A whole step or nothing: half of one would leave the music.
  const before = blockBefore(place)
  const room = steps > 0 ? amountOf(length) : before ? amountOf(lengthFor(place.section, before.length)) : 0
  return moveStart(ride, { blockId: id, by: room > step ? steps * step : 0 })
}
