import type { Action, ActionPlace, Ground } from '#actions/action.ts'

interface LogGround extends Ground {
  /** Opens the entry of the ride that is shown. */
  enter: () => void
}

export const LOG_CLASS: Action<LogGround> = {
  id: 'log.class',
  name: 'log this class',
  words: ({ store }) => `log “${store.getState().shown?.title || 'untitled ride'}” as taught…`,
  does: 'an entry in the log for the ride that is shown',
  can: ({ store }) => store.getState().shown !== null && store.getState().keepsLog,
  do: ({ enter }) => enter(),
}

/** The log of classes taught. */
export const LOG: ActionPlace<LogGround> = {
  id: 'log',
  reach: 'page',
  repeats: false,
  groups: [{ title: 'the log', actions: [LOG_CLASS] }],
}
