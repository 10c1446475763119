import type { ShellAction } from './shellGround.ts'

export const RIDE_DETAILS: ShellAction = {
  id: 'ride.details',
  name: 'details of the ride',
  does: 'title, class length, room, riders',
  can: ({ store }) => store.getState().shown !== null,
  do: ({ store }) => {
    const { clearSelection, setPlace, askRideDetails } = store.getState()
    clearSelection()
    setPlace('draft')
    askRideDetails()
  },
}
