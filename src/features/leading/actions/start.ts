import { say } from '#words/said.ts'
import type { LeadAction, StartGround } from './leadGround.ts'

export const START: LeadAction<StartGround> = {
  id: 'beforeClass.start',
  name: say('teaching.start'),
  words: ({ hasBlocks }) => (hasBlocks ? say('teaching.start') : say('teaching.startClock')),
  does: say('teaching.startDo'),
  keys: ['Space', 'Enter', 'ArrowRight', 'ArrowDown', 'PageDown'],
  isMain: true,
  do: ({ start }, { timeStamp }) => start(timeStamp),
}

export const BRIEF: LeadAction<StartGround> = {
  id: 'beforeClass.brief',
  name: say('teaching.welcome'),
  words: ({ begun }) => (begun ? say('teaching.welcomeAgain') : say('teaching.welcome')),
  does: say('teaching.welcome'),
  keys: ['B'],
  can: ({ hasBriefing }) => hasBriefing,
  do: ({ brief }, { timeStamp }) => brief(timeStamp),
}
