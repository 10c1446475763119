import type { LeadAction, StartGround } from './leadGround.ts'

export const START: LeadAction<StartGround> = {
  id: 'beforeClass.start',
  name: 'the first one is now',
  words: ({ hasBlocks }) => (hasBlocks ? 'the first one is now' : 'begin'),
  does: 'the first one is now',
  keys: ['Space', 'Enter', 'ArrowRight', 'ArrowDown', 'PageDown'],
  isMain: true,
  do: ({ start }, { timeStamp }) => start(timeStamp),
}

export const BRIEF: LeadAction<StartGround> = {
  id: 'beforeClass.brief',
  name: 'begin the briefing',
  words: ({ begun }) => (begun ? 'briefing from now again' : 'begin the briefing'),
  does: 'begin the briefing',
  keys: ['B'],
  can: ({ hasBriefing }) => hasBriefing,
  do: ({ brief }, { timeStamp }) => brief(timeStamp),
}
