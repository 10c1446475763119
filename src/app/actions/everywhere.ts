import type { ActionPlace } from '#actions/action.ts'
import { ALL_RIDES, PLACES_OF_RIDE } from './goTo.ts'
import { KEYS } from './keys.ts'
import { OWN_BIKE } from './ownBike.ts'
import { RIDE_DETAILS } from './rideDetails.ts'
import type { ShellGround } from './shellGround.ts'
import { REDO, UNDO } from './undo.ts'

/** What can be done in every place. */
export const EVERYWHERE: ActionPlace<ShellGround> = {
  id: 'everywhere',
  reach: 'everywhere',
  repeats: true,
  groups: [
    { title: 'everywhere', actions: [UNDO, REDO, KEYS] },
    { title: 'places', actions: [ALL_RIDES.action, ...PLACES_OF_RIDE.map(({ action }) => action), RIDE_DETAILS, OWN_BIKE] },
  ],
}
