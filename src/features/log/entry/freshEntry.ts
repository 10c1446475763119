import { taughtOf } from '#engine/log/taughtOf.ts'
import { clockAt, dayAt } from '#features/log/clock.ts'
import type { TaughtClass } from '#plan/taught.ts'
import type { AppState } from '#store/state.ts'

/**
 * An entry for the ride that is shown: from the class as it was led where it was led from the
 * screen, with the time it really began, else from the plan.
 */
export function freshEntry(
  { shown, shownReport, leading, newId }: Pick<AppState, 'shown' | 'shownReport' | 'leading' | 'newId'>,
  now: number,
): TaughtClass {
  const planned = { ride: shown!, report: shownReport! }
  const { startsAt } = planned.ride
  if (leading?.led && leading.log && leading.plan.ride.id === planned.ride.id) {
    // A class led late at night is logged for the day it began.
    const { startedAt } = leading.log
    return taughtOf(leading.plan, { id: newId(), day: dayAt(startedAt), bookedAt: startsAt, startedAt: clockAt(startedAt) }, leading.led)
  }
  return taughtOf(planned, { id: newId(), day: dayAt(now), bookedAt: startsAt, startedAt: startsAt })
}
