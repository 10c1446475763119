import { say } from '#words/said.ts'
import type { LeadAction, LeadGround } from './leadGround.ts'

export const CUT: LeadAction<LeadGround> = {
  id: 'lead.cut',
  name: say('teaching.cut'),
  does: say('teaching.cutDo'),
  keys: ['C'],
  isMain: true,
  can: ({ proposal }) => proposal !== undefined,
  do: ({ proposal, act }, { timeStamp }) => {
    if (proposal) act({ kind: 'cut', cuts: proposal.cuts }, timeStamp)
  },
}

export const OTHER_CUT: LeadAction<LeadGround> = {
  id: 'lead.otherCut',
  name: say('teaching.otherCut'),
  does: say('teaching.otherCutDo'),
  keys: ['X'],
  can: ({ more }) => more,
  do: ({ other }) => other(),
}
