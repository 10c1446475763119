import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { say } from '#words/said.ts'

interface HabitsGround extends Ground {
  open: () => void
}

export const OPEN_HABITS: Action<HabitsGround> = {
  id: 'rehearse.habits',
  name: say('actions.soundAndVoice'),
  does: say('actions.soundAndVoiceDo'),
  do: ({ open }) => open(),
}

/** The bar of a rehearsal has them in a dialog of their own. */
export const HABITS: ActionPlace<HabitsGround> = {
  id: 'habits',
  reach: 'page',
  repeats: false,
  groups: [{ title: say('actions.group', { group: 'rehearsing' }), actions: [OPEN_HABITS] }],
}
