import type { ShellAction } from './shellGround.ts'

export const OWN_BIKE: ShellAction = {
  id: 'ride.ownBike',
  name: 'back to its own bike',
  does: 'show the ride on its own bike again',
  can: ({ store }) => store.getState().shownReport?.shownOn !== undefined,
  do: ({ store }) => store.getState().showOn(null),
}
