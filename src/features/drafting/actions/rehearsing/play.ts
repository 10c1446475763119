import { startOfSelection } from '#features/drafting/rehearsal/startOf.ts'
import { isOpen, type RehearsalAction, type RehearsalGround } from './rehearsalGround.ts'

const hearsSong = ({ rehearsing }: RehearsalGround): boolean => rehearsing.hearing.snapshot().phase !== 'still'

/** Plays and pauses the ride; a song that is heard by itself is stopped. */
export const PLAY: RehearsalAction = {
  id: 'rehearse.play',
  name: 'play',
  words: ({ rehearsing }) => {
    const { phase } = rehearsing.rehearsal.snapshot()
    if (phase === 'playing' || phase === 'opening') return 'pause'
    return phase === 'waiting' ? 'go on' : phase === 'ended' ? 'play again' : 'play'
  },
  does: 'play from the selection, pause, and on again; space where nothing else has a use for it',
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
  name: 'from the selection',
  does: 'go to where the selection begins',
  can: (on) => isOpen(on) && (startOfSelection(on.store.getState()) !== null || 'Nothing is selected.'),
  do: ({ store, rehearsing }) => {
    const at = startOfSelection(store.getState())
    if (at !== null) rehearsing.rehearsal.seek(at)
  },
}

export const FROM_START: RehearsalAction = {
  id: 'rehearse.fromStart',
  name: 'from the start',
  does: 'go to the start of the ride',
  can: isOpen,
  do: ({ rehearsing }) => rehearsing.rehearsal.seek(0),
}
