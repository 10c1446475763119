import { isOpen, type RehearsalAction } from './rehearsalGround.ts'

export const NEXT_BLOCK: RehearsalAction = {
  id: 'rehearse.next',
  name: 'next',
  does: 'the next block; of the shaky ones the next',
  keys: ['N'],
  can: isOpen,
  do: ({ rehearsing }) => rehearsing.rehearsal.next(),
}

export const BACK_A_BLOCK: RehearsalAction = {
  id: 'rehearse.back',
  name: 'back',
  does: 'this block again; in its first eight the one before',
  keys: ['B'],
  can: isOpen,
  do: ({ rehearsing }) => rehearsing.rehearsal.back(),
}
