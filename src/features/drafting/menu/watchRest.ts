/** How long a finger rests for a menu, in milliseconds, and how far it may tremble, in pixels. */
const REST = { after: 500, within: 8 } as const

interface Point {
  x: number
  y: number
}

interface Heard {
  /** A finger came down and has neither moved nor left. */
  rested: (pressed: Element, at: Point) => void
  /** It goes on all the same, as one that drags does. */
  wentOn: () => void
}

/**
 * Hears a finger that rests for half a second, on what is dragged as well: whoever goes on from there drags. It lifts
 * without a press of its own.
 *
 * @param on within what it may rest, as a selector
 * @returns stops hearing
 */
export function watchRest(place: HTMLElement, on: string, { rested, wentOn }: Heard): () => void {
  let timer: number | undefined
  let start: Point | null = null
  let hasRested = false

  const lifted = () => {
    clearTimeout(timer)
    start = null
  }
  const down = (event: PointerEvent) => {
    lifted()
    hasRested = false
    const pressed = event.target
    if (event.pointerType === 'mouse' || !event.isPrimary || !(pressed instanceof Element) || !pressed.closest(on)) return
    // An edge and a handle of the curve are held on purpose, and a field has a menu of its own.
    if (pressed.closest('.edge, .curve-grip, .rename-field')) return
    const at = { x: event.clientX, y: event.clientY }
    start = at
    timer = window.setTimeout(() => {
      hasRested = true
      rested(pressed, at)
    }, REST.after)
  }
  const move = ({ clientX, clientY }: PointerEvent) => {
    if (!start || Math.hypot(clientX - start.x, clientY - start.y) <= REST.within) return
    lifted()
    if (hasRested) wentOn()
  }
  // The press that would follow would be about what is under the finger, and take the focus out of the menu.
  const lift = (event: TouchEvent) => {
    if (hasRested && event.cancelable) event.preventDefault()
    hasRested = false
  }

  place.addEventListener('pointerdown', down)
  window.addEventListener('pointermove', move)
  for (const name of ['pointerup', 'pointercancel'] as const) window.addEventListener(name, lifted)
  window.addEventListener('touchend', lift, { passive: false, capture: true })
  return () => {
    lifted()
    place.removeEventListener('pointerdown', down)
    window.removeEventListener('pointermove', move)
    for (const name of ['pointerup', 'pointercancel'] as const) window.removeEventListener(name, lifted)
    window.removeEventListener('touchend', lift, { capture: true })
  }
}
