import type { LeadAction, ScreenGround } from './leadGround.ts'

export const FULL_SCREEN: LeadAction<ScreenGround> = {
  id: 'screen.full',
  name: 'full screen',
  words: ({ full }) => (full ? 'leave full screen' : 'full screen'),
  does: 'full screen',
  keys: ['F'],
  can: ({ toggleFullScreen }) => toggleFullScreen !== null,
  do: ({ toggleFullScreen }) => toggleFullScreen?.(),
}

export const LEAVE: LeadAction<ScreenGround> = {
  id: 'screen.leave',
  name: 'leave',
  words: ({ confirm }) => (confirm.armed === 'leave' ? 'press again to leave' : 'leave'),
  does: 'leave the screen (press twice); the class goes on',
  keys: ['Escape'],
  armed: ({ confirm }) => confirm.armed === 'leave',
  do: ({ store, confirm }) => confirm.press('leave', () => store.getState().setPlace('draft')),
}
