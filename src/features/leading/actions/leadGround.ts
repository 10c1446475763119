import type { Action, Ground } from '#actions/action.ts'
import type { Proposal } from '#engine/leading/cuts/weighCuts.ts'
import type { LeadAct } from '#engine/leading/leadLog.ts'
import type { Confirm } from '#features/leading/useConfirm.ts'

/** What every screen of a class can do. */
export interface ScreenGround extends Ground {
  /** What has to be pressed twice. */
  confirm: Confirm
  /** Whether another window leads the class, so that nothing of it is pressed here. */
  follows: boolean
  full: boolean
  /** Fills the screen, or leaves it; null where the browser cannot. */
  toggleFullScreen: (() => void) | null
}

/** What a class under way is led on. */
export interface LeadGround extends ScreenGround {
  /** Notes what happened, by the clock the press was made on. */
  act: (what: LeadAct, timeStamp: number) => void
  /** Ends the class and offers to log it. */
  end: () => void
  held: boolean
  /** How much there is to undo. */
  acts: number
  finished: boolean
  /** What is proposed to leave out. */
  proposal: Proposal | undefined
  /** Whether there is another proposal. */
  more: boolean
  other: () => void
}

/** What is done while the room fills. */
export interface StartGround extends ScreenGround {
  /** The first one is heard. */
  start: (timeStamp: number) => void
  /** The briefing begins. */
  brief: (timeStamp: number) => void
  hasBlocks: boolean
  hasBriefing: boolean
  /** The briefing has begun. */
  begun: boolean
}

/** A class of another ride is under way. */
export interface OtherGround extends ScreenGround {
  goOn: () => void
  endOther: () => void
}

/** An action of the leading screens. */
export interface LeadAction<On extends ScreenGround> extends Action<On> {
  /** The one that is drawn for the thumb that does not look. */
  isMain?: true
  /** Whether it waits for its second press. */
  armed?: (on: On) => boolean
  /** Whether its button stands there now; its key works all the same. Always where absent. */
  stands?: (on: On) => boolean
}
