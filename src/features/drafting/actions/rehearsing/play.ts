import { startOfSelection } from '#features/drafting/rehearsal/startOf.ts'
import { say } from '#words/said.ts'
import { isOpen, type RehearsalAction, type RehearsalGround } from './rehearsalGround.ts'

const hearsSong = ({ rehearsing }: RehearsalGround): boolean => rehearsing.hearing.snapshot().phase !== 'still'

/** Plays and pauses the ride; a song that is heard by itself is stopped. */
export const PLAY: RehearsalAction = {
  id: 'rehearse.play',
  name: say('actions.play'),
  words: ({ rehearsing }) => {
    const { phase } = rehearsing.rehearsal.snapshot()
    if (phase === 'playing' || phase === 'opening') return say('actions.pause')
    return phase === 'waiting' ? say('actions.resume') : phase === 'ended' ? say('actions.playAgain') : say('actions.play')
  },
  does: say('actions.playDo'),
  keys: ['P', 'Space'],
  // Space scrolls a page on which nothing plays.
  hears: (on, chord) => chord !== 'Space' || isOpen(on) || hearsSong(on),
  do: (on) => {
    const { rehearsal, hearing } = on.rehearsing
    if (hearsSong(on)) hearing.stop()
    else if (isOpen(on)) rehearsal.toggle()
    else void rehearsal.playFrom(startOfSelection(on.store.getState()) ?? 0)
  },
}

export const FROM_SELECTION: RehearsalAction = {
  id: 'rehearse.fromSelection',
  name: say('actions.fromSelection'),
  does: say('actions.fromSelectionDo'),
  can: (on) => isOpen(on) && (startOfSelection(on.store.getState()) !== null || say('actions.nothingSelected')),
  do: ({ store, rehearsing }) => {
    const at = startOfSelection(store.getState())
    if (at !== null) rehearsing.rehearsal.seek(at)
  },
}

export const FROM_START: RehearsalAction = {
  id: 'rehearse.fromStart',
  name: say('actions.fromStart'),
  does: say('actions.fromStartDo'),
  can: isOpen,
  do: ({ rehearsing }) => rehearsing.rehearsal.seek(0),
}
