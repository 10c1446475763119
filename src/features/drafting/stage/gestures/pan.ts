import type { GestureGround } from './gestureGround.ts'
import { holdPress } from './holdPress.ts'

/** Moves the stage under a pressed pointer. */
export function pan({ scroller, content }: GestureGround, press: PointerEvent, onTravel: () => void): void {
  const from = scroller.scrollLeft
  const before = content.dataset.hand
  holdPress(content, press, {
    moved: ({ clientX }) => {
      onTravel()
      content.dataset.hand = 'moving'
      scroller.scrollLeft = from - (clientX - press.clientX)
    },
    ended: () => {
      if (before === undefined) delete content.dataset.hand
      else content.dataset.hand = before
    },
  })
}
