import { LETS_GO } from '#features/drafting/stage/drag/dragKeys.ts'

/** Pixels a press has to travel to be more than a press. */
const TRAVEL = 4

interface Held {
  /** Told each move once it has travelled. */
  moved: (event: PointerEvent) => void
  /** Told once, at the end: whether it has travelled, and whether what it did is kept. */
  ended: (end: { travelled: boolean; kept: boolean }) => void
}

/**
 * Follows a pointer that has been pressed until it lifts. Escape gives up, as do a second finger, which zooms, and whatever
 * takes the pointer away. Once it has travelled, it is held on to outside the window too, and the click that would follow is
 * nobody's.
 *
 * @param element what holds the pointer
 * @returns gives up
 */
export function holdPress(element: HTMLElement, press: PointerEvent, { moved, ended }: Held): () => void {
  let travelled = false
  const listeners = new AbortController()
  const end = (kept: boolean) => {
    listeners.abort()
    if (travelled) swallowClick()
    ended({ travelled, kept: kept && travelled })
  }
  const move = (event: PointerEvent) => {
    if (event.pointerId !== press.pointerId) return
    if (!travelled) {
      if (Math.hypot(event.clientX - press.clientX, event.clientY - press.clientY) < TRAVEL) return
      travelled = true
      element.setPointerCapture(press.pointerId)
    }
    moved(event)
  }
  const lifted = (event: PointerEvent) => {
    if (event.pointerId === press.pointerId) end(event.type === 'pointerup')
  }
  const joined = (event: PointerEvent) => {
    if (event.pointerType === 'touch' && event.pointerId !== press.pointerId) end(false)
  }
  const key = (event: KeyboardEvent) => {
    if (event.key !== LETS_GO || !travelled) return
    // It is about what is held and about nothing else.
    event.stopImmediatePropagation()
    event.preventDefault()
    end(false)
  }
  const { signal } = listeners
  window.addEventListener('pointermove', move, { signal })
  window.addEventListener('pointerup', lifted, { signal })
  window.addEventListener('pointercancel', lifted, { signal })
  window.addEventListener('pointerdown', joined, { signal, capture: true })
  window.addEventListener('keydown', key, { signal, capture: true })
  return () => {
    if (!signal.aborted) end(false)
  }
}

/** Keeps the click that a lifted pointer makes from whatever is under it. */
function swallowClick(): void {
  const swallow = (event: Event) => {
    event.stopPropagation()
    event.preventDefault()
  }
  window.addEventListener('click', swallow, { capture: true, once: true })
  // The click comes right after the pointer has lifted, or not at all; a press that was given up is still down.
  const forget = () => setTimeout(() => window.removeEventListener('click', swallow, { capture: true }))
  window.addEventListener('pointerup', forget, { once: true })
  window.addEventListener('pointerdown', forget, { once: true, capture: true })
}
