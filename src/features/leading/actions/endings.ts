import type { LeadAction, LeadGround } from './leadGround.ts'

/** Who is about to leave may have to end it: an alarm, an injury. */
const mayEnd = ({ confirm }: LeadGround): boolean => confirm.armed === 'leave' || confirm.armed === 'breakOff'

export const SKIP_SONG: LeadAction<LeadGround> = {
  id: 'lead.skipSong',
  name: 'skip song',
  words: ({ confirm }) => (confirm.armed === 'skipSong' ? 'press again to skip' : 'skip song'),
  does: 'skip the rest of the song (press twice)',
  keys: ['N'],
  armed: ({ confirm }) => confirm.armed === 'skipSong',
  stands: (on) => !on.finished && !mayEnd(on),
  do: ({ confirm, act }, { timeStamp }) => confirm.press('skipSong', () => act({ kind: 'skipSong' }, timeStamp)),
}

/** Takes the place of skipping on the screen while somebody is about to leave: that press was theirs, so this is the second. */
export const BREAK_OFF: LeadAction<LeadGround> = {
  id: 'lead.breakOff',
  name: 'end the class here',
  words: ({ confirm }) => (confirm.armed === 'leave' ? 'end the class here' : 'press again to end it here'),
  does: 'end the class here (press twice); the rest counts as skipped',
  keys: ['E'],
  armed: () => true,
  stands: (on) => !on.finished && mayEnd(on),
  do: (on, { timeStamp }) => {
    const breakOff = () => on.act({ kind: 'breakOff' }, timeStamp)
    if (mayEnd(on)) breakOff()
    else on.confirm.press('breakOff', breakOff)
  },
}

export const END: LeadAction<LeadGround> = {
  id: 'lead.end',
  name: 'end the class',
  words: ({ confirm }) => (confirm.armed === 'end' ? 'press again to end' : 'end the class'),
  does: 'end the class (press twice), and log it',
  isMain: true,
  armed: ({ confirm }) => confirm.armed === 'end',
  can: ({ finished }) => finished,
  do: ({ confirm, end }) => confirm.press('end', end),
}
