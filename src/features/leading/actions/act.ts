import { say } from '#words/said.ts'
import type { LeadAction, LeadGround } from './leadGround.ts'

const act = (kind: 'one' | 'next' | 'back' | 'again' | 'hold') => ({
  stands: ({ finished }: LeadGround) => !finished,
  do: (on: LeadGround, { timeStamp }: { timeStamp: number }) => on.act({ kind }, timeStamp),
})

// Page-turner pedals send page or arrow keys, space or enter.
export const ONE: LeadAction<LeadGround> = {
  id: 'lead.one',
  name: say('teaching.beatOne'),
  does: say('teaching.beatOneDo'),
  keys: ['Space', 'Enter'],
  isMain: true,
  ...act('one'),
}

export const HOLD: LeadAction<LeadGround> = {
  id: 'lead.hold',
  name: say('teaching.hold'),
  words: ({ held }) => (held ? say('actions.resume') : say('teaching.hold')),
  does: say('teaching.holdDo'),
  keys: ['H'],
  pressed: ({ held }) => held,
  ...act('hold'),
}

export const BACK: LeadAction<LeadGround> = {
  id: 'lead.back',
  name: say('teaching.back'),
  does: say('teaching.backDo'),
  keys: ['ArrowLeft', 'ArrowUp', 'PageUp'],
  ...act('back'),
}

export const NEXT: LeadAction<LeadGround> = {
  id: 'lead.next',
  name: say('teaching.next'),
  does: say('teaching.nextDo'),
  keys: ['ArrowRight', 'ArrowDown', 'PageDown'],
  ...act('next'),
}

export const AGAIN: LeadAction<LeadGround> = {
  id: 'lead.again',
  name: say('teaching.again'),
  does: say('teaching.again'),
  keys: ['R'],
  ...act('again'),
}
