import { say } from '#words/said.ts'
import type { LeadAction, ScreenGround } from './leadGround.ts'

export const FULL_SCREEN: LeadAction<ScreenGround> = {
  id: 'screen.full',
  name: say('teaching.fullScreen'),
  words: ({ full }) => (full ? say('teaching.leaveFullScreen') : say('teaching.fullScreen')),
  does: say('teaching.fullScreen'),
  keys: ['F'],
  can: ({ toggleFullScreen }) => toggleFullScreen !== null,
  do: ({ toggleFullScreen }) => toggleFullScreen?.(),
}

export const LEAVE: LeadAction<ScreenGround> = {
  id: 'screen.leave',
  name: say('teaching.leave'),
  words: ({ confirm }) => (confirm.armed === 'leave' ? say('teaching.leaveAgain') : say('teaching.leave')),
  does: say('teaching.leaveDo'),
  keys: ['Escape'],
  armed: ({ confirm }) => confirm.armed === 'leave',
  do: ({ store, confirm }) => confirm.press('leave', () => store.getState().setPlace('draft')),
}
