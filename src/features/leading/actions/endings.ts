import { say } from '#words/said.ts'
import type { LeadAction, LeadGround } from './leadGround.ts'

/** Who is about to leave may have to end it: an alarm, an injury. */
const mayEnd = ({ confirm }: LeadGround): boolean => confirm.armed === 'leave' || confirm.armed === 'breakOff'

export const SKIP_SONG: LeadAction<LeadGround> = {
  id: 'lead.skipSong',
  name: say('teaching.skipSong'),
  words: ({ confirm }) => (confirm.armed === 'skipSong' ? say('teaching.skipSongAgain') : say('teaching.skipSong')),
  does: say('teaching.skipSongDo'),
  keys: ['N'],
  armed: ({ confirm }) => confirm.armed === 'skipSong',
  stands: (on) => !on.finished && !mayEnd(on),
  do: ({ confirm, act }, { timeStamp }) => confirm.press('skipSong', () => act({ kind: 'skipSong' }, timeStamp)),
}

/** Takes the place of skipping on the screen while somebody is about to leave: that press was theirs, so this is the second. */
export const BREAK_OFF: LeadAction<LeadGround> = {
  id: 'lead.breakOff',
  name: say('teaching.endHere'),
  words: ({ confirm }) => (confirm.armed === 'leave' ? say('teaching.endHere') : say('teaching.endHereAgain')),
  does: say('teaching.endHereDo'),
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
  name: say('teaching.end'),
  words: ({ confirm }) => (confirm.armed === 'end' ? say('teaching.endAgain') : say('teaching.end')),
  does: say('teaching.endDo'),
  isMain: true,
  armed: ({ confirm }) => confirm.armed === 'end',
  can: ({ finished }) => finished,
  do: ({ confirm, end }) => confirm.press('end', end),
}
