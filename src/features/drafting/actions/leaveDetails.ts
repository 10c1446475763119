import { say } from '#words/said.ts'
import type { DraftAction } from './draftAction.ts'

/** Leads from a field or a list back to what it is about, once the field has no text of its own to drop. */
export const LEAVE_DETAILS: DraftAction = {
  id: 'details.leave',
  name: say('actions.leaveDetails'),
  does: say('actions.leaveDetailsDo'),
  keys: ['Escape'],
  keyOnly: true,
  can: ({ store, target, tools }) => target.kind !== 'ride' && tools.offer === null && store.getState().previewing === null,
  do: ({ target, tools }) => {
    if (target.kind !== 'ride') tools.focus(target.id)
  },
}
