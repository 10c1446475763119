import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import type { Rehearsing } from '#features/drafting/rehearsal/RehearsalContext.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'

interface HearGround extends Ground {
  rehearsing: Rehearsing
  /** The section whose song is meant, and the second of it at which the section begins. */
  sectionId: string
  inPoint: Seconds
}

const plays = ({ rehearsing, sectionId }: HearGround): boolean => {
  const { sectionId: heard, phase } = rehearsing.hearing.snapshot()
  return heard === sectionId && phase !== 'still'
}

/** On from where the song stands, if it is this one and has been begun. */
function startFrom({ rehearsing: { hearing }, sectionId, inPoint }: HearGround): Seconds {
  const at = hearing.snapshot().sectionId === sectionId ? hearing.secondAt() : 0
  return at > 0 ? at : inPoint
}

export const HEAR_BEAT: Action<HearGround> = {
  id: 'hear.beat',
  name: say('actions.hearBeat'),
  words: (on) => (plays(on) ? say('actions.stop') : say('actions.hearBeat')),
  does: say('actions.hearBeatDo'),
  do: (on) => {
    const { hearing } = on.rehearsing
    if (plays(on)) hearing.stop()
    else void hearing.play(on.sectionId, startFrom(on))
  },
}

export const HEAR_FROM_IN_POINT: Action<HearGround> = {
  id: 'hear.fromInPoint',
  name: say('actions.hearFromStart'),
  does: say('actions.hearFromStartDo'),
  do: ({ rehearsing, sectionId, inPoint }) => void rehearsing.hearing.play(sectionId, inPoint),
}

/** The details of a song whose beats are known. */
export const HEARING: ActionPlace<HearGround> = {
  id: 'hearing',
  reach: 'page',
  repeats: false,
  groups: [{ title: say('actions.group', { group: 'hearing' }), actions: [HEAR_BEAT, HEAR_FROM_IN_POINT] }],
}
