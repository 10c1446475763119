import { say } from '#words/said.ts'
import { isOpen, type RehearsalAction } from './rehearsalGround.ts'

export const NEXT_BLOCK: RehearsalAction = {
  id: 'rehearse.next',
  name: say('actions.nextBlock'),
  does: say('actions.nextBlockDo'),
  keys: ['N'],
  can: isOpen,
  do: ({ rehearsing }) => rehearsing.rehearsal.next(),
}

export const BACK_A_BLOCK: RehearsalAction = {
  id: 'rehearse.back',
  name: say('actions.previousBlock'),
  does: say('actions.previousBlockDo'),
  keys: ['B'],
  can: isOpen,
  do: ({ rehearsing }) => rehearsing.rehearsal.back(),
}
