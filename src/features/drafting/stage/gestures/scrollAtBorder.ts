import { borderPace } from './borderPace.ts'

/**
 * Scrolls a box on, frame by frame, while something is held at its border.
 *
 * @param start where it was picked up, in the window
 * @param pointer where it is now
 * @param scrolled told after each step, since what is under the pointer is then another place
 * @returns stops
 */
export function scrollAtBorder(box: HTMLElement, start: number, pointer: () => number, scrolled: () => void): () => void {
  let frame = requestAnimationFrame(step)
  function step() {
    frame = requestAnimationFrame(step)
    const { left, right } = box.getBoundingClientRect()
    const pace = borderPace(pointer(), { from: left, to: right }, start)
    if (pace === 0) return
    const before = box.scrollLeft
    box.scrollLeft += pace
    if (box.scrollLeft !== before) scrolled()
  }
  return () => cancelAnimationFrame(frame)
}
