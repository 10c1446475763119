/** What of the stage is seen, in pixels from the left edge of all of it. */
export interface Sight {
  left: number
  width: number
}

/** Pixels of what comes that are still in sight when the stage turns on, and of what was when it has. */
const AHEAD = 48
const BEHIND = 96

export const isInSight = (x: number, { left, width }: Sight): boolean => x >= left && x <= left + width

/**
 * Where to scroll to, so that a head that moves is seen: nowhere while it is, and else on to a
 * stretch that begins shortly before it, as a page of a score is turned. Null where the stage can stay.
 */
export function turnTo(x: number, { left, width }: Sight): number | null {
  const ahead = Math.min(AHEAD, width / 4)
  if (x >= left && x <= left + width - ahead) return null
  return Math.max(0, x - Math.min(BEHIND, width / 4))
}
