/** How long a finger rests for a menu, in milliseconds, and how far it may tremble, in pixels. */
const REST = { after: 500, within: 8 } as const

interface Point {
  x: number
  y: number
}

/**
 * Hears a finger that rests: one that has neither moved nor left within half a second. It lifts without a press of its own.
 *
 * @param on within what elements it may rest, as a selector
 * @returns stops hearing
 */
export function watchRest(place: HTMLElement, on: string, rested: (pressed: Element, at: Point) => void): () => void {
  let timer: number | undefined
  let start: Point | null = null
  let isSpent = false

  const stop = () => {
    clearTimeout(timer)
    start = null
  }
  const down = (event: PointerEvent) => {
    stop()
    isSpent = false
    const pressed = event.target
    if (event.pointerType === 'mouse' || !event.isPrimary || !(pressed instanceof Element) || !pressed.closest(on)) return
    // What is pulled by its edge is held on purpose.
    if (pressed.closest('.edge')) return
    const at = { x: event.clientX, y: event.clientY }
    start = at
    timer = window.setTimeout(() => {
      stop()
      isSpent = true
      rested(pressed, at)
    }, REST.after)
  }
  const move = ({ clientX, clientY }: PointerEvent) => {
    if (start && Math.hypot(clientX - start.x, clientY - start.y) > REST.within) stop()
  }
  // The press that would follow would be about what is under the finger, and take the focus out of the menu.
  const lift = (event: TouchEvent) => {
    if (isSpent) event.preventDefault()
    isSpent = false
  }

  place.addEventListener('pointerdown', down)
  window.addEventListener('pointermove', move)
  for (const name of ['pointerup', 'pointercancel'] as const) window.addEventListener(name, stop)
  window.addEventListener('touchend', lift, { passive: false, capture: true })
  return () => {
    stop()
    place.removeEventListener('pointerdown', down)
    window.removeEventListener('pointermove', move)
    for (const name of ['pointerup', 'pointercancel'] as const) window.removeEventListener(name, stop)
    window.removeEventListener('touchend', lift, { capture: true })
  }
}
