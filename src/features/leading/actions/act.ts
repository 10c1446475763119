import type { LeadAction, LeadGround } from './leadGround.ts'

const act = (kind: 'one' | 'next' | 'back' | 'again' | 'hold') => ({
  stands: ({ finished }: LeadGround) => !finished,
  do: (on: LeadGround, { timeStamp }: { timeStamp: number }) => on.act({ kind }, timeStamp),
})

// Page-turner pedals send page or arrow keys, space or enter.
export const ONE: LeadAction<LeadGround> = {
  id: 'lead.one',
  name: 'on the one now',
  does: 'on the one now',
  keys: ['Space', 'Enter'],
  isMain: true,
  ...act('one'),
}

export const HOLD: LeadAction<LeadGround> = {
  id: 'lead.hold',
  name: 'hold here',
  words: ({ held }) => (held ? 'go on' : 'hold here'),
  does: 'hold here, and on again',
  keys: ['H'],
  pressed: ({ held }) => held,
  ...act('hold'),
}

export const BACK: LeadAction<LeadGround> = {
  id: 'lead.back',
  name: 'back',
  does: 'this block again; a song’s first block: the song starts now',
  keys: ['ArrowLeft', 'ArrowUp', 'PageUp'],
  ...act('back'),
}

export const NEXT: LeadAction<LeadGround> = {
  id: 'lead.next',
  name: 'next',
  does: 'on to the next block; before a song: its one is now',
  keys: ['ArrowRight', 'ArrowDown', 'PageDown'],
  ...act('next'),
}

export const AGAIN: LeadAction<LeadGround> = {
  id: 'lead.again',
  name: 'once more',
  does: 'the round once more',
  keys: ['R'],
  ...act('again'),
}
