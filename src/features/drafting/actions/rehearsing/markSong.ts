import { say } from '#words/said.ts'
import { isOpen, type RehearsalAction } from './rehearsalGround.ts'

export const MARK_SONG: RehearsalAction = {
  id: 'rehearse.mark',
  name: say('actions.markSong'),
  does: say('actions.markSongDo'),
  keys: ['M'],
  writes: true,
  // Its buttons are the parts of a song, in the details.
  keyOnly: true,
  can: (on) => isOpen(on) || on.rehearsing.hearing.snapshot().phase === 'playing',
  do: ({ rehearsing: { rehearsal, hearing, lastMark } }, { timeStamp }) => {
    if (hearing.snapshot().phase === 'playing') hearing.mark(lastMark.label, 'eight', timeStamp)
    else rehearsal.mark(lastMark.label, timeStamp)
  },
}
