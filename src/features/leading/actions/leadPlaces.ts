import type { ActionPlace } from '#actions/action.ts'
import { say } from '#words/said.ts'
import { AGAIN, BACK, HOLD, NEXT, ONE } from './act.ts'
import { CUT, OTHER_CUT } from './cuts.ts'
import { BREAK_OFF, END, SKIP_SONG } from './endings.ts'
import type { LeadAction, LeadGround, OtherGround, ScreenGround, StartGround } from './leadGround.ts'
import { END_OTHER, GO_ON } from './otherClass.ts'
import { FULL_SCREEN, LEAVE } from './screen.ts'
import { BRIEF, START } from './start.ts'
import { UNDO_PRESS } from './undoPress.ts'

/** An action for the window that leads: in one that follows its button is gone, and its key says why. */
function whereLed<On extends ScreenGround>(action: LeadAction<On>): LeadAction<On> {
  return {
    ...action,
    can: (on) => (on.follows ? say('teaching.ledElsewhere') : (action.can?.(on) ?? true)),
    stands: (on) => !on.follows && (action.stands?.(on) ?? true),
  }
}

/** The buttons under each screen, in this order; the screen’s own stand at the end of each. */
export const START_BAR: readonly LeadAction<StartGround>[] = [START, BRIEF].map(whereLed)
export const LEAD_BAR: readonly LeadAction<LeadGround>[] = [END, ONE, HOLD, BACK, NEXT, AGAIN, BREAK_OFF, SKIP_SONG, UNDO_PRESS].map(
  whereLed,
)
export const OTHER_BAR: readonly LeadAction<OtherGround>[] = [GO_ON, whereLed(END_OTHER)]
export const SCREEN_BAR: readonly LeadAction<ScreenGround>[] = [FULL_SCREEN, LEAVE]

/** A key that is held down counts as one press, so that nothing is skipped by a thing laid on the keyboard. */
const onScreen = { reach: 'page', repeats: false } as const

export const BEFORE_CLASS: ActionPlace<StartGround> = {
  id: 'beforeClass',
  ...onScreen,
  groups: [{ title: say('actions.group', { group: 'beforeClass' }), actions: START_BAR }],
}

export const LEADING: ActionPlace<LeadGround> = {
  id: 'leading',
  ...onScreen,
  groups: [{ title: say('actions.group', { group: 'teaching' }), actions: [...LEAD_BAR, whereLed(CUT), whereLed(OTHER_CUT)] }],
}

export const OTHER_CLASS: ActionPlace<OtherGround> = {
  id: 'otherClass',
  ...onScreen,
  groups: [{ title: say('actions.group', { group: 'otherClass' }), actions: OTHER_BAR }],
}

/** Each of them, whichever stands. */
export const SCREEN: ActionPlace<ScreenGround> = {
  id: 'screen',
  ...onScreen,
  groups: [{ title: say('actions.group', { group: 'teaching' }), actions: SCREEN_BAR }],
}

export const LEAD_PLACES = [BEFORE_CLASS, LEADING, OTHER_CLASS, SCREEN] as const
