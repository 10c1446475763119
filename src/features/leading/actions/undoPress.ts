import type { LeadAction, LeadGround } from './leadGround.ts'

export const UNDO_PRESS: LeadAction<LeadGround> = {
  id: 'lead.undo',
  name: 'undo the last press',
  words: ({ acts, confirm }) => (acts > 0 ? 'undo' : confirm.armed === 'restart' ? 'press again to start over' : 'start over'),
  does: 'undo the last press; before the first: start over (press twice)',
  keys: ['Backspace', 'Mod+Z'],
  armed: ({ confirm }) => confirm.armed === 'restart',
  stands: ({ finished, acts }) => !finished || acts > 0,
  do: ({ store, confirm }) => {
    if (store.getState().takeBack()) store.getState().announce('Undone.')
    else confirm.press('restart', () => store.getState().restartClass())
  },
}
