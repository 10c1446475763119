import { say } from '#words/said.ts'
import type { ShellAction } from './shellGround.ts'

export const OWN_BIKE: ShellAction = {
  id: 'ride.ownBike',
  name: say('actions.ownBike'),
  does: say('actions.ownBikeDo'),
  can: ({ store }) => store.getState().shownReport?.shownOn !== undefined,
  do: ({ store }) => store.getState().showOn(null),
}
