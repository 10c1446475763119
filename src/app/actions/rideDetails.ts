import { say } from '#words/said.ts'
import type { ShellAction } from './shellGround.ts'

export const RIDE_DETAILS: ShellAction = {
  id: 'ride.details',
  name: say('actions.rideDetails'),
  does: say('actions.rideDetailsDo'),
  can: ({ store }) => store.getState().shown !== null,
  do: ({ store }) => {
    const { clearSelection, setPlace, askRideDetails } = store.getState()
    clearSelection()
    setPlace('draft')
    askRideDetails()
  },
}
