import { say } from '#words/said.ts'
import { isOpen, type RehearsalAction } from './rehearsalGround.ts'

export const REPEAT: RehearsalAction = {
  id: 'rehearse.repeat',
  name: say('actions.loop'),
  does: say('actions.loopDo'),
  keys: ['R'],
  can: (on) => {
    const { rehearsal } = on.rehearsing
    return isOpen(on) && (rehearsal.snapshot().way.kind === 'block' || rehearsal.blockNow() !== null || say('actions.noBlockHere'))
  },
  pressed: ({ rehearsing }) => rehearsing.rehearsal.snapshot().way.kind === 'block',
  do: ({ rehearsing }) => rehearsing.rehearsal.toggleRepeat(),
}
