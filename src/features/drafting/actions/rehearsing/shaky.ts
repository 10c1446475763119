import { shakyLegs } from '#engine/rehearsal/courses.ts'
import { say } from '#words/said.ts'
import { isOpen, type RehearsalAction, type RehearsalGround } from './rehearsalGround.ts'

export const MARK_SHAKY: RehearsalAction = {
  id: 'rehearse.shaky',
  name: say('actions.needsPractice'),
  does: say('actions.needsPracticeDo'),
  keys: ['X'],
  writes: true,
  can: (on) => isOpen(on) && (on.rehearsing.rehearsal.blockNow() !== null || say('actions.noBlockHere')),
  pressed: ({ store, rehearsing }) => {
    const blockId = rehearsing.rehearsal.blockNow()
    return blockId !== null && (store.getState().shown?.shaky?.includes(blockId) ?? false)
  },
  do: ({ rehearsing }, { timeStamp }) => void rehearsing.rehearsal.toggleShaky(timeStamp),
}

export const REHEARSE_SHAKY: RehearsalAction = {
  id: 'rehearse.shakyOnes',
  name: say('actions.rehearseMarked'),
  does: say('actions.rehearseMarkedDo'),
  can: (on) => isOpen(on) && hasShaky(on),
  pressed: ({ rehearsing }) => rehearsing.rehearsal.snapshot().way.kind === 'shaky' || undefined,
  do: ({ rehearsing }) => rehearsing.rehearsal.playShaky(),
}

function hasShaky({ store }: RehearsalGround): boolean {
  const { shown, shownReport } = store.getState()
  return (shown?.shaky?.length ?? 0) > 0 && shownReport !== null && shakyLegs({ ride: shown!, report: shownReport }).length > 0
}
