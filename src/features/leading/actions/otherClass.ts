import type { LeadAction, OtherGround } from './leadGround.ts'

export const GO_ON: LeadAction<OtherGround> = {
  id: 'otherClass.goOn',
  name: 'go on with it',
  does: 'go on with the class that is being led',
  keys: ['Space', 'Enter'],
  isMain: true,
  do: ({ goOn }) => goOn(),
}

export const END_OTHER: LeadAction<OtherGround> = {
  id: 'otherClass.end',
  name: 'end it',
  words: ({ confirm }) => (confirm.armed === 'end' ? 'press again to end it' : 'end it'),
  does: 'end the class that is being led (press twice)',
  armed: ({ confirm }) => confirm.armed === 'end',
  do: ({ confirm, endOther }) => confirm.press('end', endOther),
}
