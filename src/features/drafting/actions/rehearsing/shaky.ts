import { shakyLegs } from '#engine/rehearsal/courses.ts'
import { isOpen, type RehearsalAction, type RehearsalGround } from './rehearsalGround.ts'

export const MARK_SHAKY: RehearsalAction = {
  id: 'rehearse.shaky',
  name: 'shaky',
  does: 'mark this block as shaky, or take the mark away',
  keys: ['X'],
  writes: true,
  can: (on) => isOpen(on) && (on.rehearsing.rehearsal.blockNow() !== null || 'No block is ridden here.'),
  pressed: ({ store, rehearsing }) => {
    const blockId = rehearsing.rehearsal.blockNow()
    return blockId !== null && (store.getState().shown?.shaky?.includes(blockId) ?? false)
  },
  do: ({ rehearsing }, { timeStamp }) => void rehearsing.rehearsal.toggleShaky(timeStamp),
}

export const REHEARSE_SHAKY: RehearsalAction = {
  id: 'rehearse.shakyOnes',
  name: 'rehearse the shaky ones',
  does: 'play the blocks that are marked as shaky, one after another',
  can: (on) => isOpen(on) && hasShaky(on),
  pressed: ({ rehearsing }) => rehearsing.rehearsal.snapshot().way.kind === 'shaky' || undefined,
  do: ({ rehearsing }) => rehearsing.rehearsal.playShaky(),
}

function hasShaky({ store }: RehearsalGround): boolean {
  const { shown, shownReport } = store.getState()
  return (shown?.shaky?.length ?? 0) > 0 && shownReport !== null && shakyLegs({ ride: shown!, report: shownReport }).length > 0
}
