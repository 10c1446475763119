import { type Place, standsAlone } from '#store/placeSlice.ts'
import { say } from '#words/said.ts'
import type { ShellAction } from './shellGround.ts'

/** A place of the page, and going there. */
export interface GoTo {
  place: Place
  action: ShellAction
}

const goTo = (place: Exclude<Place, 'merge'>): GoTo => ({
  place,
  action: {
    id: `go.${place}`,
    name: say('actions.place', { place }),
    does: say('actions.placeDo', { place }),
    can: ({ store }) => standsAlone(place) || store.getState().shown !== null,
    do: ({ store }) => store.getState().setPlace(place),
  },
})

export const MY_RIDES: GoTo = goTo('start')

const SONGS = goTo('songs')
export const TO_SONGS = SONGS.action

/** In the order in which they stand in the head. */
export const PLACES_OF_RIDE: readonly GoTo[] = [
  goTo('draft'),
  goTo('sheet'),
  goTo('lead'),
  goTo('handover'),
  goTo('setup'),
  SONGS,
  goTo('log'),
]

/** What can be gone to without a ride. */
export const OTHER_PLACES = PLACES_OF_RIDE.filter(({ place }) => standsAlone(place))
