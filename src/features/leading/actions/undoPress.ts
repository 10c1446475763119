import { say } from '#words/said.ts'
import { words } from '#words/words.ts'
import type { LeadAction, LeadGround } from './leadGround.ts'

export const UNDO_PRESS: LeadAction<LeadGround> = {
  id: 'lead.undo',
  name: say('teaching.undoPress'),
  words: ({ acts, confirm }) =>
    acts > 0 ? say('teaching.undoPressButton') : confirm.armed === 'restart' ? say('teaching.restartAgain') : say('teaching.restart'),
  does: say('teaching.undoPressDo'),
  keys: ['Backspace', 'Mod+Z'],
  armed: ({ confirm }) => confirm.armed === 'restart',
  stands: ({ finished, acts }) => !finished || acts > 0,
  do: ({ store, confirm }) => {
    if (store.getState().takeBack()) store.getState().announce(words.teaching.undonePress)
    else confirm.press('restart', () => store.getState().restartClass())
  },
}
