import type { TimeScale } from '#features/drafting/stage/timeScale.ts'
import type { AppStore } from '#store/state.ts'

/** A frame over blocks, in pixels of all of the stage. */
interface Frame {
  left: number
  top: number
  right: number
  bottom: number
}

/** What a gesture shows besides what it does: a frame, or the value that is held, beside the pointer. */
export interface Shown {
  frame?: Frame
  value?: { x: number; y: number; words: string }
}

/** What the gestures of the stage are made on. */
export interface GestureGround {
  store: AppStore
  /** The box that is scrolled, and all of the stage in it. */
  scroller: HTMLElement
  content: HTMLElement
  scale: () => TimeScale
  show: (shown: Shown | null) => void
}

/** Gives the focus to a stop of the stage, where the keys then are about what is selected. */
export const focusStop = (content: HTMLElement, id: string): void =>
  content.querySelector<HTMLElement>(`[data-stage-stop][data-id="${CSS.escape(id)}"]`)?.focus({ preventScroll: true })
