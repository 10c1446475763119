import type { Stretch } from '#units/units.ts'

/** How wide the border is within which what is held scrolls the stage, in pixels, and how far it goes with a frame at most. */
const BORDER = { width: 48, fastest: 16 } as const

/**
 * How many pixels the stage scrolls on in one frame while something is held at its border: the nearer to the edge, the
 * faster, to the left with a minus; 0 away from the border. What was picked up within it scrolls nothing until it has gone
 * further out.
 *
 * @param sight where the stage begins and ends, on the axis of `x`
 * @param start where it was picked up
 */
export function borderPace(x: number, { from, to }: Stretch, start: number): number {
  const room = Math.min(BORDER.width, (to - from) / 4)
  const left = Math.min(room, start - from)
  const right = Math.min(room, to - start)
  if (x < from + left) return -pace((from + left - x) / room)
  if (x > to - right) return pace((x - (to - right)) / room)
  return 0
}

const pace = (share: number): number => Math.ceil(Math.min(1, share) * BORDER.fastest)
