import { type Place, standsAlone } from '#store/placeSlice.ts'
import type { ShellAction } from './shellGround.ts'

/** A place of the page, and going there. */
export interface GoTo {
  place: Place
  action: ShellAction
}

const goTo = (place: Place, words: string, does: string): GoTo => ({
  place,
  action: {
    id: `go.${place}`,
    name: words,
    does,
    can: ({ store }) => standsAlone(place) || store.getState().shown !== null,
    do: ({ store }) => store.getState().setPlace(place),
  },
})

export const ALL_RIDES: GoTo = goTo('start', 'all rides', 'to all rides')

const SONGS = goTo('songs', 'songs', 'to your songs')
export const TO_SONGS = SONGS.action

/** In the order in which they stand in the head. */
export const PLACES_OF_RIDE: readonly GoTo[] = [
  goTo('draft', 'draft', 'to the stage, to draft the ride'),
  goTo('sheet', 'sheet', 'to the sheets of the ride, to print'),
  goTo('lead', 'lead', 'to the screen to lead the class from'),
  goTo('handover', 'hand over', 'to the link, the code and the file of the ride'),
  goTo('setup', 'bikes & riders', 'to the bike, the riders and the house rules'),
  SONGS,
  goTo('log', 'log', 'to the classes taught'),
]

/** What can be gone to without a ride. */
export const OTHER_PLACES = PLACES_OF_RIDE.filter(({ place }) => standsAlone(place))
