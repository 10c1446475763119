import { say } from '#words/said.ts'
import type { LeadAction, OtherGround } from './leadGround.ts'

export const GO_ON: LeadAction<OtherGround> = {
  id: 'otherClass.goOn',
  name: say('teaching.resumeClass'),
  does: say('teaching.resumeClassDo'),
  keys: ['Space', 'Enter'],
  isMain: true,
  do: ({ goOn }) => goOn(),
}

export const END_OTHER: LeadAction<OtherGround> = {
  id: 'otherClass.end',
  name: say('teaching.endClass'),
  words: ({ confirm }) => (confirm.armed === 'end' ? say('teaching.endClassAgain') : say('teaching.endClass')),
  does: say('teaching.endClassDo'),
  armed: ({ confirm }) => confirm.armed === 'end',
  do: ({ confirm, endOther }) => confirm.press('end', endOther),
}
