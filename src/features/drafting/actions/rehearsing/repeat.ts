import { isOpen, type RehearsalAction } from './rehearsalGround.ts'

export const REPEAT: RehearsalAction = {
  id: 'rehearse.repeat',
  name: 'repeat',
  does: 'repeat this block, and on again',
  keys: ['R'],
  can: (on) => {
    const { rehearsal } = on.rehearsing
    return isOpen(on) && (rehearsal.snapshot().way.kind === 'block' || rehearsal.blockNow() !== null || 'No block is ridden here.')
  },
  pressed: ({ rehearsing }) => rehearsing.rehearsal.snapshot().way.kind === 'block',
  do: ({ rehearsing }) => rehearsing.rehearsal.toggleRepeat(),
}
