import type { LeadClock } from '#store/leadClock.ts'

/** The clocks of a browser. */
interface Clocks {
  /** Milliseconds since 1970 at the zero of the page's timestamps. */
  timeOrigin: number
  /** The page's own monotonic clock: what frames and events are stamped with. */
  now: () => number
  /** The machine's clock on the wall, in milliseconds since 1970. */
  wall: () => number
}

/** A larger difference between the two clocks is the machine having slept. */
const SLEPT_MS = 1000

/**
 * The page's monotonic clock placed on the calendar. It never goes back and nobody sets it, so a
 * class does not jump when the machine corrects its time; small drift is left alone for the same
 * reason. But in many systems it stands still while the machine sleeps: between two looks the wall
 * clock then gains at once what was slept, and only that is taken over. (Were it set forward by a
 * second or more in the middle of a class, the class would follow, and one press on the one would
 * bring it back.) A page loaded after a sleep may begin with an origin that does not know of it:
 * there, too, the wall is right.
 */
export function createLeadClock({ timeOrigin, now, wall }: Clocks = browserClocks): LeadClock {
  let before = { mono: now(), wall: wall() }
  const ahead = before.wall - before.mono - timeOrigin
  let slept = Math.abs(ahead) > SLEPT_MS ? ahead : 0
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
