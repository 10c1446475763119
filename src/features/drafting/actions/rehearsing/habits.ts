import type { Action, ActionPlace, Ground } from '#actions/action.ts'

interface HabitsGround extends Ground {
  open: () => void
}

export const OPEN_HABITS: Action<HabitsGround> = {
  id: 'rehearse.habits',
  name: 'sound and voice',
  does: 'how loud, with which clicks, and whether cues are spoken',
  do: ({ open }) => open(),
}

/** The bar of a rehearsal has them in a dialog of their own. */
export const HABITS: ActionPlace<HabitsGround> = {
  id: 'habits',
  reach: 'page',
  repeats: false,
  groups: [{ title: 'rehearsing', actions: [OPEN_HABITS] }],
}
