import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { say } from '#words/said.ts'
import { words } from '#words/words.ts'

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
  name: say('actions.seeChanges'),
  does: say('actions.seeChangesDo'),
  can: ({ store }) => store.getState().ownRide !== null,
  do: ({ store }) => void store.getState().startMerge(),
})

export const KEEP_COPY = withReceived({
  id: 'received.keep',
  name: say('actions.keepCopy'),
  does: say('actions.keepCopyDo'),
  do: ({ store }) => {
    const { received, keepCopy, place, setPlace, announce } = store.getState()
    keepCopy()
    if (place === 'start') setPlace('draft')
    announce(words.actions.copyKept({ title: received?.ride.title || words.names.untitled }))
  },
})

export const SHOW_RECEIVED = withReceived({
  id: 'received.show',
  name: say('actions.showReceived'),
  does: say('actions.showReceivedDo'),
  can: ({ store }) => store.getState().place === 'start',
  do: ({ store }) => store.getState().setPlace('draft'),
})

export const CLOSE_RECEIVED = withReceived({
  id: 'received.close',
  name: say('actions.closeReceived'),
  words: ({ store }) => (store.getState().ride ? say('actions.closeToOwn') : say('actions.closeReceivedButton')),
  does: say('actions.closeReceived'),
  do: ({ store }) => store.getState().dismissReceived(),
})

/** A ride from a link or a file. */
export const RECEIVED: ActionPlace<Ground> = {
  id: 'received',
  reach: 'page',
  repeats: false,
  groups: [{ title: say('actions.group', { group: 'received' }), actions: [SEE_CHANGES, KEEP_COPY, SHOW_RECEIVED, CLOSE_RECEIVED] }],
}
