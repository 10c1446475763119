import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { say } from '#words/said.ts'

interface LogGround extends Ground {
  /** Opens the entry of the ride that is shown. */
  enter: () => void
}

export const LOG_CLASS: Action<LogGround> = {
  id: 'log.class',
  name: say('actions.logClass'),
  words: ({ store }) => say('actions.logThis', { title: store.getState().shown?.title || say('names.untitled') }),
  does: say('actions.logClassDo'),
  can: ({ store }) => store.getState().shown !== null && store.getState().keepsLog,
  do: ({ enter }) => enter(),
}

/** The log of classes taught. */
export const LOG: ActionPlace<LogGround> = {
  id: 'log',
  reach: 'page',
  repeats: false,
  groups: [{ title: say('actions.group', { group: 'log' }), actions: [LOG_CLASS] }],
}
