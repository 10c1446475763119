import type { ActionPlace, Ground } from '#actions/action.ts'
import { EFFORT_KEYS } from '#ui/effortKeys.ts'
import { FIELD_KEYS } from '#ui/fieldKeys.ts'
import { say } from '#words/said.ts'
import { MY_RIDES, PLACES_OF_RIDE } from './goTo.ts'
import { KEYS } from './keys.ts'
import { OWN_BIKE } from './ownBike.ts'
import { RIDE_DETAILS } from './rideDetails.ts'
import type { ShellGround } from './shellGround.ts'
import { REDO, UNDO, UNDO_LIST } from './undo.ts'

/** What can be done in every place. */
export const EVERYWHERE: ActionPlace<ShellGround> = {
  id: 'everywhere',
  reach: 'everywhere',
  repeats: true,
  groups: [
    { title: say('actions.group', { group: 'everywhere' }), actions: [UNDO, REDO, UNDO_LIST, KEYS] },
    {
      title: say('actions.group', { group: 'places' }),
      actions: [MY_RIDES.action, ...PLACES_OF_RIDE.map(({ action }) => action), RIDE_DETAILS, OWN_BIKE],
    },
  ],
}

/** Fields have keys of their own, wherever they stand. */
export const FIELDS: ActionPlace<Ground> = {
  id: 'fields',
  reach: 'focus',
  repeats: true,
  groups: [
    { title: say('actions.group', { group: 'fields' }), actions: [], also: FIELD_KEYS },
    { title: say('actions.group', { group: 'effort' }), actions: [], also: EFFORT_KEYS },
  ],
}
