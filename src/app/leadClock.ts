import type { LeadClock } from '#store/leadClock.ts'

/** The clocks of a browser. */
export interface Clocks {
  /** Milliseconds since 1970 at the zero of the page's timestamps. */
  timeOrigin: number
  /** The page's own monotonic clock: what frames and events are stamped with. */
  now: () => number
  /** The machine's clock on the wall, in milliseconds since 1970. */
  wall: () => number
}

/** The wall clock running ahead by more, from one look to the next, is the machine having slept. */
const SLEPT_MS = 1000

/**
 * The page's monotonic clock placed on the calendar. It never goes back and nobody sets it, so a
 * class does not jump when the machine corrects its time; small drift is left alone for the same
 * reason. But in many systems it stands still while the machine sleeps. Between two looks the wall
 * clock then gains what was slept at once, and only that is taken over. (Were it set forward by a
 * second or more in the middle of a class, the class would follow: one press on the one brings it
 * back.) After a reload the new page's origin is the wall's again.
 */
export function createLeadClock({ timeOrigin, now, wall }: Clocks = browserClocks): LeadClock {
  let slept = 0
  let before = { mono: now(), wall: wall() }
  const look = () => {
    const seen = { mono: now(), wall: wall() }
    const gained = seen.wall - before.wall - (seen.mono - before.mono)
    if (gained > SLEPT_MS) slept += gained
    before = seen
  }
  return {
    now,
    instantOf: (timeStamp) => {
      look()
      return timeOrigin + timeStamp + slept
    },
  }
}

const browserClocks: Clocks = {
  get timeOrigin() {
    return performance.timeOrigin
  },
  now: () => performance.now(),
  wall: () => Date.now(),
}
