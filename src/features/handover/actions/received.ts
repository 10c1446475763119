import type { Action, ActionPlace, Ground } from '#actions/action.ts'

/** Something to do with a ride that came from elsewhere, for as long as it is shown. */
const withReceived = (action: Action<Ground>): Action<Ground> => ({
  ...action,
  can: (on) => {
    const { received, place } = on.store.getState()
    return received !== null && place !== 'merge' && (action.can?.(on) ?? true)
  },
})

export const SEE_CHANGES = withReceived({
  id: 'received.changes',
  name: 'see what changed',
  does: 'hold it against the ride of yours it belongs to',
  can: ({ store }) => store.getState().ownRide !== null,
  do: ({ store }) => void store.getState().startMerge(),
})

export const KEEP_COPY = withReceived({
  id: 'received.keep',
  name: 'keep a copy',
  does: 'make it a ride of your own',
  do: ({ store }) => {
    const { received, keepCopy, place, setPlace, announce } = store.getState()
    keepCopy()
    if (place === 'start') setPlace('draft')
    announce(`“${received?.ride.title || 'untitled ride'}” is now a ride of your own.`)
  },
})

export const SHOW_RECEIVED = withReceived({
  id: 'received.show',
  name: 'show it',
  does: 'show the shared ride',
  can: ({ store }) => store.getState().place === 'start',
  do: ({ store }) => store.getState().setPlace('draft'),
})

export const CLOSE_RECEIVED = withReceived({
  id: 'received.close',
  name: 'close the shared ride',
  words: ({ store }) => (store.getState().ride ? 'close, back to my ride' : 'close'),
  does: 'put the shared ride away',
  do: ({ store }) => store.getState().dismissReceived(),
})

/** A ride from a link or a file. */
export const RECEIVED: ActionPlace<Ground> = {
  id: 'received',
  reach: 'page',
  repeats: false,
  groups: [{ title: 'a shared ride', actions: [SEE_CHANGES, KEEP_COPY, SHOW_RECEIVED, CLOSE_RECEIVED] }],
}
