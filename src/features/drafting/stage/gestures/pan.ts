import type { GestureGround } from './gestureGround.ts'
import { holdPress } from './holdPress.ts'

/** Moves the stage under a pressed pointer. */
export function pan({ scroller, content }: GestureGround, press: PointerEvent, onTravel: () => void): void {
  const from = scroller.scrollLeft
  const before = content.dataset.hand
  const focused = content.contains(document.activeElement) ? (document.activeElement as HTMLElement) : null
  holdPress(content, press, {
    moved: ({ clientX }) => {
      onTravel()
      content.dataset.hand = 'moving'
      scroller.scrollLeft = from - (clientX - press.clientX)
    },
    ended: ({ travelled }) => {
      // The press has taken the focus, which a view that is moved leaves where it was.
      if (travelled) focused?.focus({ preventScroll: true })
      if (before === undefined) delete content.dataset.hand
      else content.dataset.hand = before
    },
  })
}
