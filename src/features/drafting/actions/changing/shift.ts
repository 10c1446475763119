import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { shiftProblem, shiftRun } from '#plan/commands/shiftRun.ts'
import { say } from '#words/said.ts'
import { carryOut } from './carryOut.ts'

const shiftBy = (by: 1 | -1) => ({
  does: say('many.shiftDo'),
  writes: true as const,
  inMenu: true as const,
  over: ['several'] as const,
  can: ({ store, target }: DraftGround) => {
    const { ride } = store.getState()
    if (!ride || target.kind === 'ride' || target.kind === 'section') return false
    return shiftProblem(ride, { ids: target.ids, by }) ?? true
  },
  do: (on: DraftGround) => {
    const { ride } = on.store.getState()
    if (ride && on.target.kind !== 'ride' && on.target.kind !== 'section') carryOut(on, shiftRun(ride, { ids: on.target.ids, by }), 'same')
  },
})

export const SHIFT_EARLIER: DraftAction = { id: 'stage.shiftEarlier', name: say('many.shiftEarlier'), keys: ['<'], ...shiftBy(-1) }
export const SHIFT_LATER: DraftAction = { id: 'stage.shiftLater', name: say('many.shiftLater'), keys: ['>'], ...shiftBy(1) }
