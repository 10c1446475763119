import type { CurvePart } from './effortPull.ts'

/** A press on the stage, as far as it matters to what it begins. */
interface StagePress {
  button: number
  shift: boolean
  /** Space is held down. */
  space: boolean
  isMouse: boolean
  /** A handle of the curve that was pressed. */
  handle: CurvePart | null
  /** What of the curve lies under it, where the ride can be changed. */
  curve: CurvePart | null
  /** On the edge of a block, which is pulled. */
  onEdge: boolean
  /** On the row of blocks, on a card as well. */
  inBlocks: boolean
  /** On something that answers a press itself: a card, a song's head, an edge. */
  taken: boolean
}

type Gesture = 'pan' | 'frame' | 'curve'

/**
 * What a press that travels becomes; null where it is left to what was pressed, or to the browser, which scrolls under a
 * finger. The middle button and a held space move the stage from anywhere. Shift draws a frame over cards too; without it the
 * row of blocks draws one where it is empty, and what is empty elsewhere moves the stage.
 */
export function whatPress(press: StagePress): Gesture | null {
  if (press.handle !== null && press.button === 0) return 'curve'
  if (!press.isMouse) return null
  if (press.button === 1) return 'pan'
  if (press.button !== 0) return null
  if (press.space) return 'pan'
  if (press.onEdge) return null
  if (press.inBlocks) return press.shift || !press.taken ? 'frame' : null
  if (press.taken) return null
  return press.curve === null ? 'pan' : 'curve'
}
