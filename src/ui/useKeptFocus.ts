import { type RefObject, useEffect } from 'react'

/** What takes the focus, whether with Tab or by a script. */
const FOCUSABLE =
  'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), summary, [tabindex="0"]'

/** A place the focus was in, from the innermost outwards, with how many others stood before it there. */
type Trail = { container: Element; index: number }[]

/**
 * Keeps the focus where the hand is. When what has it is taken away, as a button is by its own press, the focus goes to
 * what stands in its place: the same place of the nearest thing around it that is still there, or `main`.
 *
 * @param root everything the focus may be moved within
 */
export function useKeptFocus(root: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const { current: whole } = root
    if (!whole) return
    let last: HTMLElement | null = null
    let trail: Trail = []
    const remember = ({ target }: FocusEvent) => {
      last = target instanceof HTMLElement ? target : null
      trail = last ? trailOf(last, whole) : []
    }
    // A press beside everything gives the focus up for good. What is taken away loses it too, but is gone a moment later.
    const forget = ({ target }: FocusEvent) => {
      queueMicrotask(() => {
        if (target === last && last?.isConnected && !last.matches(':disabled')) last = null
      })
    }
    const look = () => {
      if (!last || (last.isConnected && !last.matches(':disabled'))) return
      const { activeElement } = document
      if (activeElement !== document.body && activeElement !== last) return
      const lost = last
      last = null
      for (const { container, index } of trail) {
        // What stood by itself, as a bar above the page does, leaves to the page itself.
        if (container === whole) return whole.querySelector<HTMLElement>('main')?.focus({ preventScroll: true })
        const next = container.isConnected ? inPlaceOf(lost, stopsIn(container), index) : undefined
        if (next) return next.focus({ preventScroll: true })
      }
    }
    const observer = new MutationObserver(look)
    observer.observe(whole, { childList: true, subtree: true, attributes: true, attributeFilter: ['disabled'] })
    whole.addEventListener('focusin', remember)
    whole.addEventListener('focusout', forget)
    return () => {
      observer.disconnect()
      whole.removeEventListener('focusin', remember)
      whole.removeEventListener('focusout', forget)
    }
  }, [root])
}

function trailOf(element: HTMLElement, whole: Element): Trail {
  const trail: Trail = []
  for (let container = element.parentElement; container; container = container.parentElement) {
    trail.push({ container, index: Math.max(0, stopsIn(container).indexOf(element)) })
    if (container === whole) break
  }
  return trail
}

/** How many stops away something of the same kind is still where the hand was. */
const NEAR = 3

/** What stands at a place now; rather its neighbor where that is of the kind that was lost, as the next repair is after a repair. */
function inPlaceOf(lost: Element, stops: readonly HTMLElement[], index: number): HTMLElement | undefined {
  const at = Math.min(index, stops.length - 1)
  const alike = stops
    .map((stop, i) => ({ stop, away: Math.abs(i - at) }))
    .filter(({ stop, away }) => away <= NEAR && stop.tagName === lost.tagName && stop.className === lost.className)
    .toSorted((a, b) => a.away - b.away)
  return alike[0]?.stop ?? stops[at]
}

const stopsIn = (container: Element): HTMLElement[] =>
  [...container.querySelectorAll<HTMLElement>(FOCUSABLE)].filter((stop) => stop.tabIndex >= 0)
