import { startOfSelection } from '#features/drafting/rehearsal/startOf.ts'
import { say } from '#words/said.ts'
import { isOpen, type RehearsalAction } from './rehearsalGround.ts'

export const REHEARSE: RehearsalAction = {
  id: 'rehearse.open',
  name: say('actions.rehearse'),
  does: say('actions.rehearseDo'),
  can: (on) => isOpen(on) || (on.store.getState().shownReport?.overall.total ?? 0) > 0 || say('actions.nothingToPlay'),
  pressed: isOpen,
  do: (on) => {
    const { rehearsal } = on.rehearsing
    if (isOpen(on)) rehearsal.close()
    else rehearsal.open(startOfSelection(on.store.getState()) ?? 0)
  },
}

/** The button that opens the bar. */
const OPENER = `[data-action="${REHEARSE.id}"]`

/** Whether the focus is on the button that opens the bar, from which it goes to what plays. */
export const isOpenerFocused = (): boolean => document.activeElement?.matches(OPENER) ?? false

export const CLOSE_REHEARSAL: RehearsalAction = {
  id: 'rehearse.close',
  name: say('actions.closeRehearsal'),
  does: say('actions.closeRehearsalDo'),
  can: isOpen,
  do: ({ rehearsing }) => {
    rehearsing.rehearsal.close()
    document.querySelector<HTMLElement>(OPENER)?.focus({ preventScroll: true })
  },
}
