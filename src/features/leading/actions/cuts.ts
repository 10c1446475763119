import type { LeadAction, LeadGround } from './leadGround.ts'

export const CUT: LeadAction<LeadGround> = {
  id: 'lead.cut',
  name: 'cut it',
  does: 'take the cut that is proposed',
  keys: ['C'],
  isMain: true,
  can: ({ proposal }) => proposal !== undefined,
  do: ({ proposal, act }, { timeStamp }) => {
    if (proposal) act({ kind: 'cut', cuts: proposal.cuts }, timeStamp)
  },
}

export const OTHER_CUT: LeadAction<LeadGround> = {
  id: 'lead.otherCut',
  name: 'another way',
  does: 'propose another cut',
  keys: ['X'],
  can: ({ more }) => more,
  do: ({ other }) => other(),
}
